package slotledger.catalog.internal.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.catalog.BoardDraft;
import slotledger.catalog.BoardDrafts;
import slotledger.catalog.internal.file.BoardReading;
import slotledger.catalog.internal.match.BoardEntry;
import slotledger.catalog.internal.match.DefaultCatalog;
import slotledger.catalog.spi.BoardFile;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.BoardForm;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.Interleave;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.BoardReport;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.unit.Capacity;

class BoardDraftsTest {

    private static final ModuleKind MODULE =
            ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(8)).with(Buffering.UNBUFFERED);
    private static final ModuleKind CHIPS = ModuleKind.of(Generation.LPDDR4, Form.SOLDERED, Capacity.ofGiB(4));
    private static final DefaultCatalog NOTHING = new DefaultCatalog(List.of());

    /** Slots as label and content, one after the other. */
    private static BoardReport report(String tag, String model, int largestGiB, Object... slots) {
        List<ObservedSlot> observed = new ArrayList<>();
        for (int i = 0; i < slots.length; i += 2) {
            observed.add(new ObservedSlot(Optional.of((String) slots[i]).filter(label -> !label.isEmpty()),
                    slots[i + 1] == null ? SlotContent.EMPTY : SlotContent.of((ModuleKind) slots[i + 1]), "", "",
                    Place.ofFile("firmware/" + tag)));
        }
        return new BoardReport(new ObservedMachine(new AssetTag(tag), "", "Kestrin", model, new Whereabouts("", ""), "",
                "", "", "", OptionalInt.empty(), "", OptionalInt.empty(), Optional.empty(), observed,
                Place.ofFile("firmware/" + tag)), List.of(), Optional.of(BoardForm.DESKTOP),
                Optional.of(Capacity.ofGiB(largestGiB)), Optional.of(true), List.of());
    }

    private static Board read(BoardDraft draft) {
        BoardReading reading = BoardReading.of(new BoardFile(draft.fileName(), draft.yaml()));
        assertEquals(List.of(), reading.findings(), draft.yaml());
        return reading.entry().orElseThrow().board();
    }

    private static List<String> codes(BoardDrafts drafts) {
        return drafts.findings().stream().map(Finding::code).toList();
    }

    @Test
    void aDraftSaysWhatFirmwareSaysAndNamesItAsItsSource() {
        BoardDrafts drafts = DraftMaker.make(List.of(report("K-1", "KB \"510\"", 64, "DIMM1", MODULE, "DIMM2", null)),
                NOTHING);
        assertEquals(List.of(), drafts.findings());
        Board board = read(drafts.drafts().get(0));
        assertEquals("kestrin-kb-510", board.id().value());
        assertEquals("KB \"510\"", board.model());
        assertEquals(List.of("DIMM1", "DIMM2"), board.slots().stream().map(slot -> slot.label()).toList());
        assertEquals(Generation.DDR4, board.takes().get(0).generation());
        assertEquals(Optional.of(Capacity.ofGiB(64)), board.largestTotal());
        assertEquals(Ground.FIRMWARE, board.source().ground());
        assertTrue(board.source().toString().contains("firmware/K-1"), board.source().toString());
        assertEquals(Interleave.UNKNOWN, board.interleave());
        assertEquals(EccOutcome.UNKNOWN, board.takes().get(0).ecc());
    }

    @Test
    void aDraftSaysMoreWithEveryMachineOfTheModel() {
        BoardReport plain = report("K-1", "KB-510", 64, "DIMM1", ModuleKind.of(Generation.DDR4, Form.DIMM,
                Capacity.ofGiB(8)), "DIMM2", null);
        assertTrue(read(DraftMaker.make(List.of(plain), NOTHING).drafts().get(0))
                .takes().get(0).bufferings().isEmpty());
        BoardReport checked = report("K-2", "kb-510", 64, "DIMM1", MODULE.with(ErrorCheck.ECC), "DIMM2", null);
        BoardDraft both = DraftMaker.make(List.of(plain, checked), NOTHING).drafts().get(0);
        assertEquals(2, both.machines());
        assertEquals(EccOutcome.USED, read(both).takes().get(0).ecc());
        assertEquals(Set.of(Buffering.UNBUFFERED), read(both).takes().get(0).bufferings());
    }

    @Test
    void machinesOfOneModelThatContradictEachOtherAreNamed() {
        BoardDrafts drafts = DraftMaker.make(List.of(report("K-1", "KB-510", 64, "DIMM1", MODULE),
                report("K-2", "KB-510", 64, "DIMM1", MODULE), report("K-3", "KB-510", 32, "A", MODULE, "B", null)),
                NOTHING);
        assertEquals(List.of("draft-slots-differ", "draft-largest-differs"), codes(drafts));
        assertEquals("K-3", drafts.findings().get(0).machine().orElseThrow().value());
        assertEquals(1, read(drafts.drafts().get(0)).slots().size());
    }

    @Test
    void solderedMemoryIsNoSocketAndMayVary() {
        Board same = read(DraftMaker.make(List.of(report("K-1", "KB-5", 20, "Onboard", CHIPS, "DIMM1", MODULE)),
                NOTHING).drafts().get(0));
        assertEquals(1, same.sockets().size());
        assertEquals(Capacity.ofGiB(4), same.slot("Onboard").soldered().orElseThrow().capacity());
        Board varies = read(DraftMaker.make(List.of(report("K-1", "KB-5", 20, "Onboard", CHIPS, "DIMM1", MODULE),
                report("K-2", "KB-5", 20, "Onboard", ModuleKind.of(Generation.LPDDR4, Form.SOLDERED,
                        Capacity.ofGiB(8)), "DIMM1", null)), NOTHING).drafts().get(0));
        assertEquals(Optional.empty(), varies.slot("Onboard").soldered());
    }

    @Test
    void aModelWhoseFirmwareTellsTooLittleHasNoDraftAndSaysSo() {
        BoardDrafts drafts = DraftMaker.make(List.of(report("K-1", "KB-510", 64, "DIMM1", null),
                report("K-2", "", 64, "DIMM1", MODULE)), NOTHING);
        assertEquals(List.of(), drafts.drafts());
        assertEquals(List.of("draft-without-model", "draft-impossible"), codes(drafts));
    }

    @Test
    void slotsWithoutNamesAreNumberedAndAskedFor() {
        BoardDraft draft = DraftMaker.make(List.of(report("K-1", "KB-510", 64, "", MODULE, "", null)), NOTHING)
                .drafts().get(0);
        assertEquals(List.of("1", "2"), read(draft).slots().stream().map(slot -> slot.label()).toList());
        assertTrue(draft.open().contains("the printed names of the slots"), draft.open().toString());
    }

    @Test
    void aDocumentedBoardIsNotDraftedButComparedWithItsFirmware() {
        BoardEntry documented = BoardReading.of(new BoardFile("kb.yaml", """
                board: kb
                maker: Kestrin
                model: KB-510
                form: desktop
                source: {document: Board manual KB-510, page: 22}
                channels: {A: [DIMM1], B: [DIMM2]}
                takes: {generation: DDR4, form: DIMM}
                largest-total: 32 GB
                """)).entry().orElseThrow();
        BoardDrafts drafts = DraftMaker.make(List.of(report("K-1", "KB-510", 64, "DIMM1", MODULE)),
                new DefaultCatalog(List.of(documented)));
        assertEquals(List.of(), drafts.drafts());
        assertEquals(List.of("firmware-against-document", "firmware-against-document"), codes(drafts));
    }

    @Test
    void whatTheProcessorCanNotTakeIsSaidAndWhatItTakesStandsInTheDraft() {
        BoardDrafts drafts = DraftMaker.make(List.of(onProcessor(report("K-1", "KB-510", 64, "DIMM1", MODULE, "DIMM2",
                null), "Intel(R) Core(TM) i5-2400 CPU @ 3.10GHz")), NOTHING);
        assertEquals(List.of("firmware-against-platform", "firmware-against-platform"), codes(drafts));
        String yaml = drafts.drafts().get(0).yaml();
        assertTrue(yaml.contains("2 channels, at most 2 modules in each") && yaml.contains("from memory"), yaml);
        read(drafts.drafts().get(0));
    }

    @Test
    void lowPowerMemoryForWhichFirmwareHasOneWordIsNoContradiction() {
        assertEquals(List.of(), codes(DraftMaker.make(List.of(onProcessor(report("K-1", "KB-5", 16, "A", CHIPS),
                "11th Gen Intel(R) Core(TM) i5-1135G7 @ 2.40GHz")), NOTHING)));
    }

    @Test
    void whereFirmwareTellsNoTotalThatOfTheProcessorStandsInFromMemory() {
        BoardReport known = report("K-1", "KB-510", 64, "DIMM1", MODULE, "DIMM2", null);
        BoardReport silent = onProcessor(new BoardReport(known.machine(), List.of(), known.form(), Optional.empty(),
                Optional.empty(), List.of()), "Intel(R) Core(TM) i7-9700 CPU @ 3.00GHz");
        Board board = read(DraftMaker.make(List.of(silent), NOTHING).drafts().get(0));
        assertEquals(Optional.of(Capacity.ofGiB(128)), board.largestTotal());
        assertEquals(Ground.MEMORY, board.sourceOf(BoardFact.LARGEST_TOTAL).ground());
    }

    private static BoardReport onProcessor(BoardReport report, String processor) {
        ObservedMachine machine = report.machine();
        return new BoardReport(new ObservedMachine(machine.tag(), machine.serial(), machine.maker(), machine.model(),
                machine.where(), "", "", "", processor, OptionalInt.of(1), "", machine.slotCount(), machine.total(),
                machine.slots(), machine.place()), report.otherNames(), report.form(), report.largestTotal(),
                report.corrects(), report.lies());
    }

    @Test
    void whateverAFieldHoldsTheDraftIsAWholeBoardFile() {
        for (String name : List.of("K: [x]", "#1", "a\\b\"c", "\u0007bell", "yes", "*a", "& b", "- x", "日本 1")) {
            read(DraftMaker.make(List.of(report("K-1", name, 64, name, MODULE, "DIMM2", null)), NOTHING).drafts()
                    .get(0));
        }
    }
}
