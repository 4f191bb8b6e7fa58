package slotledger.workbench.internal.why;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.app.FleetDesk;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.plan.Outcome;
import slotledger.model.source.Place;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.workbench.internal.SmallFleet;
import slotledger.workbench.internal.session.Opened;

class WhyTreeTest {

    private static final AssetTag TAG = new AssetTag("PC-1");
    private static final Population BARE = Population.empty(SmallFleet.BOARD);
    private static final Machine MACHINE = SmallFleet.machine("PC-1", "", "", BARE);

    @Test
    void theRulesAreListedWithTheirSourcesAndRemedies() {
        Reason reason = reason(Weight.LOWERS, "One channel is empty.", "Fill S2.");
        List<WhyNode> tree = WhyTree.of(judge(reason), SmallFleet.opened(MACHINE), Optional.empty(), TAG);
        assertEquals("""
                Now: worst is ▼ lowers []
                  ▼ lowers: One channel is empty. [Manual, page 3]
                    Fill S2. []
                """, text(tree, ""));
    }

    @Test
    void aMissingFactAndFinerReasonsHangBelowTheReason() {
        Reason finer = reason(Weight.BLOCKS, "Its notch sits elsewhere.", "");
        Reason reason = new Reason("made-up", Weight.UNKNOWN, "Nobody knows its ranks.", List.of("S2"),
                Source.document("Manual", "page 3"), "Read the label.", List.of(finer), Optional.of(MissingFact.RANKS));
        assertEquals("""
                Now: worst is ? unknown []
                  ? unknown: Nobody knows its ranks. [Manual, page 3]
                    Missing: the ranks of a module []
                    To find it: Read the label. []
                    ✗ blocks: Its notch sits elsewhere. [Manual, page 3]
                """, text(WhyTree.of(judge(reason), SmallFleet.opened(MACHINE), Optional.empty(), TAG), ""));
    }

    @Test
    void aMachineBelowItsTargetSaysWhatItLacks() {
        Opened opened = SmallFleet.lacking(MACHINE, "4 GB instead of 8 GB", "no error correction");
        assertEquals("""
                Now: ✓ all rules hold []
                Below its target: 4 GB instead of 8 GB; no error correction []
                """, text(WhyTree.of(judge(), opened, Optional.empty(), TAG), ""));
    }

    @Test
    void aMachineThatWasNotHelpedSaysWhatHoldsItBack() {
        Opened opened = SmallFleet.opened(MACHINE);
        List<WhyNode> tree = WhyTree.of(judge(), opened, Optional.of(SmallFleet.plan(opened,
                SmallFleet.planned(MACHINE, BARE, Outcome.NOT_HELPED))), TAG);
        assertEquals("""
                Plan: not helped []
                  Held back by budget: The money is spent. []
                    What would change it: 50 more. []
                Now: ✓ all rules hold []
                """, text(tree, ""));
    }

    @Test
    void aMachineOfUnknownBoardShowsItsFindings() {
        Finding finding = new Finding(Severity.ERROR, "unknown-board", Place.ofFile("fleet.csv"), Optional.of(TAG), "",
                "No such board.", "", "Read the label.");
        Finding other = finding.about(new AssetTag("PC-2"));
        Opened opened = SmallFleet.opened(
                List.of(), List.of(SmallFleet.unresolved("PC-1")), List.of(finding, other));
        assertEquals("""
                error: No such board. [fleet.csv]
                  Read the label. []
                """, text(WhyTree.of(judge(), opened, Optional.empty(), TAG), ""));
    }

    private static Reason reason(Weight weight, String sentence, String remedy) {
        return new Reason(
                "made-up", weight, sentence, List.of(), Source.document("Manual", "page 3"), remedy, List.of(),
                Optional.empty());
    }

    private static FleetDesk judge(Reason... reasons) {
        Weight worst = reasons.length == 0 ? Weight.PASSES : reasons[0].weight();
        Verdict verdict = new Verdict(worst, SmallFleet.operation(BARE), List.of(reasons));
        return (FleetDesk) Proxy.newProxyInstance(WhyTreeTest.class.getClassLoader(), new Class<?>[] {FleetDesk.class},
                (proxy, method, arguments) -> {
                    if (method.getName().equals("judge")) {
                        return verdict;
                    }
                    throw new AssertionError("Only judging is asked for.");
                });
    }

    private static String text(List<WhyNode> nodes, String indent) {
        StringBuilder text = new StringBuilder();
        for (WhyNode node : nodes) {
            text.append(indent).append(node.text()).append(" [").append(node.source()).append("]\n")
                    .append(text(node.children(), indent + "  "));
        }
        return text.toString();
    }
}
