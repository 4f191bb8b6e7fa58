package slotledger.export.internal.matrix;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import slotledger.model.board.Binding;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.Fill;
import slotledger.model.board.FillRow;
import slotledger.model.board.Interleave;
import slotledger.model.board.Processor;
import slotledger.model.board.RateLimit;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.board.Takes;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ContactMetal;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;

/**
 * One fact of a board in words; what no document says is left out.
 *
 * @param name  "largest module"
 * @param value "8 GB"
 * @param fact  which fact it is, for its source
 */
record FactLine(String name, String value, BoardFact fact) {

    static List<FactLine> of(Board board) {
        Lines lines = new Lines();
        for (int i = 0; i < board.takes().size(); i++) {
            takes(lines, board.takes().get(i), board.takes().size() == 1 ? "" : " (way " + (i + 1) + ")");
        }
        lines.add("Largest total", board.largestTotal(), BoardFact.LARGEST_TOTAL);
        lines.add("Chipset addresses", board.addressable(), BoardFact.ADDRESSABLE);
        fill(lines, board.fill());
        board.banks().list().forEach(bank ->
                lines.add("Bank " + bank.name(), "filled as a whole: " + joined(bank.slots()), BoardFact.BANKS));
        lines.add("Bits read at once", number(board.banks().busBits()), BoardFact.BANKS);
        if (board.interleave() != Interleave.UNKNOWN) {
            lines.add("Unequal channels", board.interleave().text(), BoardFact.INTERLEAVE);
        }
        board.rateLimits().forEach(limit -> lines.add("Rate limit", rate(limit), BoardFact.RATES));
        board.processors().forEach(each -> lines.add("Processor " + each.name(), processor(each),
                BoardFact.PROCESSORS));
        board.redundancies().forEach(terms -> redundancy(lines, terms));
        return lines.list;
    }

    private static void takes(Lines lines, Takes takes, String way) {
        String where = takes.slots().isEmpty() ? "" : ", in " + joined(takes.slots().stream().sorted().toList());
        lines.add("Takes" + way, takes.generation().text() + " "
                + joined(takes.forms().stream().sorted().map(Form::text).toList()) + where, BoardFact.TAKES);
        lines.add("Buffering" + way, joined(takes.bufferings().stream().sorted().map(Buffering::text).toList()),
                BoardFact.BUFFERING);
        if (takes.ecc() != EccOutcome.UNKNOWN) {
            lines.add("ECC" + way, takes.ecc().text(), BoardFact.ECC);
        }
        lines.add("Voltage" + way, sorted(takes.voltages()), BoardFact.VOLTAGE);
        lines.add("Grades" + way, sorted(takes.rates()), BoardFact.RATES);
        lines.add("Smallest module" + way, takes.smallestModule(), BoardFact.LARGEST_MODULE);
        lines.add("Largest module" + way, takes.largestModule(), BoardFact.LARGEST_MODULE);
        lines.add("Chip width" + way, joined(takes.chipWidths().stream().sorted().map(ChipWidth::text).toList()),
                BoardFact.CHIP_WIDTH);
        lines.add("Smallest chip" + way, takes.smallestChip(), BoardFact.CHIP_SIZE);
        lines.add("Largest chip" + way, takes.largestChip(), BoardFact.CHIP_SIZE);
        lines.add("Ranks of a module, at most" + way, number(takes.moduleRanks()), BoardFact.RANKS);
        lines.add("Ranks in a channel, at most" + way, number(takes.channelRanks()), BoardFact.RANKS);
        lines.add("Dies stacked in a chip, at most" + way, number(takes.tallestStack()), BoardFact.STACK);
        lines.add("Slowest access time" + way, takes.slowest(), BoardFact.ACCESS_TIME);
        lines.add("Contacts" + way, takes.contacts().map(ContactMetal::text), BoardFact.CONTACTS);
    }

    private static void fill(Lines lines, Fill fill) {
        lines.add("Order of filling", fill.order().isEmpty() ? "" : joined(fill.order())
                + (fill.binding() == Binding.REQUIRED ? " (must)" : " (recommended)"), BoardFact.FILL);
        for (FillRow row : fill.table()) {
            lines.add("Fill table, %d modules".formatted(row.slots().size()), joined(row.slots())
                    + row.fastest().map(rate -> ", at most " + rate).orElse("")
                    + (row.processors() == 1 ? "" : ", " + row.processors() + " processors"), BoardFact.FILL);
        }
        lines.add("Only what the table prints", fill.tableOnly() ? "yes" : "", BoardFact.FILL);
        lines.add("Modules in sets of", fill.setSize() == 1 ? "" : Integer.toString(fill.setSize()), BoardFact.FILL);
        lines.add("Largest modules first", fill.largestFirst() ? "yes" : "", BoardFact.FILL);
        lines.add("Most ranks first", fill.ranksFirst() ? "yes" : "", BoardFact.FILL);
        lines.add("Empty sockets hold", fill.blank().map(Filler::text), BoardFact.FILL);
    }

    private static String rate(RateLimit limit) {
        List<String> when = new ArrayList<>();
        limit.modulesPerChannel().ifPresent(count -> when.add(count + " in a channel"));
        limit.ranks().ifPresent(ranks -> when.add(ranks + (ranks == 1 ? " rank" : " ranks")));
        limit.buffering().ifPresent(buffering -> when.add(buffering.text()));
        limit.voltage().ifPresent(voltage -> when.add(voltage.toString()));
        return limit.fastest() + (when.isEmpty() ? ", always" : ", with " + joined(when));
    }

    private static String processor(Processor processor) {
        List<String> limits = new ArrayList<>();
        processor.fastest().ifPresent(rate -> limits.add("at most " + rate));
        processor.largestTotal().ifPresent(total -> limits.add("addresses " + total));
        return limits.isEmpty() ? "limits not known" : joined(limits);
    }

    private static void redundancy(Lines lines, RedundancyTerms terms) {
        String name = "Memory kept " + terms.redundancy().text();
        lines.add(name, terms.share().map(share -> share.parts() + " of " + share.of() + " parts usable")
                .orElse("the largest rank of each channel is kept back"), BoardFact.REDUNDANCY);
        terms.sets().forEach(set -> lines.add(name + ", set", joined(set.slots()), BoardFact.REDUNDANCY));
    }

    private static String joined(Collection<String> texts) {
        return String.join(", ", texts);
    }

    private static String sorted(Collection<?> values) {
        return values.stream().sorted().map(Object::toString).collect(Collectors.joining(", "));
    }

    private static Optional<Integer> number(OptionalInt number) {
        return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
    }

    /** The lines under way. */
    private static final class Lines {

        private final List<FactLine> list = new ArrayList<>();

        void add(String name, Optional<?> value, BoardFact fact) {
            add(name, value.map(Object::toString).orElse(""), fact);
        }

        void add(String name, String value, BoardFact fact) {
            if (!value.isEmpty()) {
                list.add(new FactLine(name, value, fact));
            }
        }
    }
}
