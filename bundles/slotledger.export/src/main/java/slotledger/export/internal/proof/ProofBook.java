package slotledger.export.internal.proof;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import slotledger.export.ExportException;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.WholeFile;
import slotledger.export.internal.text.Words;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Machine;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.Proof;
import slotledger.model.proof.ProofOutcome;

/** The proof workbook: how every machine of a plan ended, and what differs. */
public final class ProofBook {

    private static final int[] SUMMARY_WIDTHS = {40, 14, 22, 74};
    private static final int[] MACHINE_WIDTHS = {10, 16, 18, 18, 12, 46, 40, 52};
    private static final int[] DIFFERENCE_WIDTHS = {10, 16, 18, 18, 12, 56, 56};
    private static final int[] FINDING_WIDTHS = {10, 10, 30, 42, 24, 24, 36};

    private static final List<ProofOutcome> WORST_FIRST = List.of(ProofOutcome.WORSE, ProofOutcome.NOT_SEEN,
            ProofOutcome.NOT_DONE, ProofOutcome.DONE_DIFFERENTLY, ProofOutcome.DONE);

    private final Proof proof;

    public ProofBook(Proof proof) {
        this.proof = proof;
    }

    public void write(Path file) throws ExportException {
        Currency currency = proof.machines().isEmpty()
                ? Currency.getInstance("EUR") : proof.machines().get(0).plan().labour().currency();
        WholeFile.write(file, out -> {
            try (Book workbook = new Book("Proof: " + proof.planTitle(), currency)) {
                summary(workbook.page("Summary", SUMMARY_WIDTHS));
                machines(workbook.page("Machines", MACHINE_WIDTHS));
                differences(workbook.page("Differences", DIFFERENCE_WIDTHS));
                findings(workbook.page("Findings", FINDING_WIDTHS));
                workbook.save(out);
            }
        });
    }

    private void summary(Page page) {
        page.title("Proof: " + proof.planTitle());
        page.next().text(0, "Compared on").date(1, Optional.of(proof.date()));
        page.next().text(0, "Every opened machine ended as planned")
                .text(1, proof.isComplete() ? "yes" : "no", Look.STRONG);
        page.gap();
        page.subheader("How machines ended", "All machines", "Of these, to be opened", "What it means");
        for (ProofOutcome outcome : ProofOutcome.values()) {
            long opened = proof.machines().stream()
                    .filter(machine -> machine.outcome() == outcome && machine.plan().isOpened()).count();
            page.next().text(0, outcome.text(), Look.STRONG).count(1, proof.count(outcome)).count(2, opened)
                    .text(3, meaning(outcome));
        }
        long opened = proof.machines().stream().filter(machine -> machine.plan().isOpened()).count();
        page.next().text(0, "All", Look.STRONG).number(1, proof.machines().size(), Look.COUNT_STRONG)
                .number(2, opened, Look.COUNT_STRONG);
        page.gap();
        page.next().text(0, "Findings in the inventory taken after").count(1, proof.findings().size());
    }

    private static String meaning(ProofOutcome outcome) {
        return switch (outcome) {
            case DONE -> "Every slot holds what was planned.";
            case DONE_DIFFERENTLY -> "Other than planned, but the planned total and the target are reached.";
            case NOT_DONE -> "As before the work.";
            case WORSE -> "Less memory than planned and not as before, or less than before. Look at these first.";
            case NOT_SEEN -> "The inventory doesn't list the machine, or not its memory.";
        };
    }

    private void machines(Page page) {
        page.title("How every machine ended").gap();
        page.header("Machine", "Site", "Room", "How it ended", "To be opened", "Planned", "Before", "Remark");
        for (MachineProof machine : worstFirst()) {
            place(page, machine);
            page.text(4, machine.plan().isOpened() ? "yes" : "no")
                    .text(5, Words.operation(machine.plan().runsAfter()))
                    .text(6, Words.operation(machine.plan().runsNow()))
                    .text(7, machine.remark());
        }
        page.filter(MACHINE_WIDTHS.length);
    }

    private void differences(Page page) {
        page.title("What differs, slot by slot").gap();
        page.header("Machine", "Site", "Room", "How it ended", "Slot", "Planned", "Found");
        List<MachineProof> differing =
                worstFirst().stream().filter(machine -> !machine.differences().isEmpty()).toList();
        for (MachineProof machine : differing) {
            for (MachineProof.Difference difference : machine.differences()) {
                place(page, machine);
                page.text(4, difference.where()).text(5, difference.planned()).text(6, difference.found());
            }
        }
        if (differing.isEmpty()) {
            page.next().text(0, "Nothing differs.");
        }
        page.filter(DIFFERENCE_WIDTHS.length);
    }

    /** What somebody must look at stands above what is done. */
    private List<MachineProof> worstFirst() {
        return proof.machines().stream()
                .sorted(Comparator.comparingInt(machine -> WORST_FIRST.indexOf(machine.outcome()))).toList();
    }

    private static void place(Page page, MachineProof proof) {
        Machine machine = proof.plan().machine();
        page.next().text(0, machine.tag().value()).text(1, machine.where().site()).text(2, machine.where().room())
                .text(3, proof.outcome().text(), Look.STRONG);
    }

    private void findings(Page page) {
        page.title("Findings").gap();
        page.header("Severity", "Machine", "Where", "What is the matter", "Seen", "Expected", "What to do");
        for (Finding finding : proof.findings()) {
            page.next().text(0, finding.severity().text(), Look.STRONG)
                    .text(1, finding.machine().map(Object::toString).orElse(""))
                    .text(2, finding.place().toString()).text(3, finding.message()).text(4, finding.seen())
                    .text(5, finding.expected()).text(6, finding.remedy());
        }
        if (proof.findings().isEmpty()) {
            page.next().text(0, "None.");
        }
        page.filter(FINDING_WIDTHS.length);
    }
}
