package slotledger.app;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.AssetTag;
import slotledger.model.unit.Money;

/**
 * Something to find out before money is spent.
 *
 * @param how       what it takes
 * @param subject   the machines' model, the board, or the offer
 * @param machines  machines that are alike for it; looking at the first is enough. Empty where no machine is opened
 * @param questions what to find out
 * @param stake     price of the modules that a plan buys for these machines
 * @param waiting   purchase lines that hang on the answer, by offer
 */
public record LookAt(How how, String subject, List<AssetTag> machines, List<Question> questions, Money stake,
        List<String> waiting) {

    /** What it takes to find out, the cheapest first. */
    public enum How {
        ASK_SUPPLIER("ask the supplier"),
        READ_DOCUMENT("read the document"),
        ASK_MACHINE("ask the running machine"),
        OPEN("open one machine");

        private final String text;

        How(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /**
     * One thing to find out.
     *
     * @param text "the ranks of a module in DIMM1, DIMM2"
     * @param way  how to find it
     */
    public record Question(String text, String way) {
        public Question {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(way, "way");
        }
    }

    public LookAt {
        Objects.requireNonNull(how, "how");
        Objects.requireNonNull(subject, "subject");
        machines = List.copyOf(machines);
        questions = List.copyOf(questions);
        Objects.requireNonNull(stake, "stake");
        waiting = List.copyOf(waiting);
    }
}
