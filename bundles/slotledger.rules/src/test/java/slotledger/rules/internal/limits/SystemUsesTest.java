package slotledger.rules.internal.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;

/** Outside check: Microsoft, Memory Limits for Windows and Windows Server Releases. */
class SystemUsesTest {

    private static final Board BOARD = BoardText.board("none", """
            channel A 1 A1
            takes DDR4 DIMM
            """);

    private static Setup setup(String system, String module) {
        return new Setup(BOARD, 1, Optional.empty(), Optional.of(system), Redundancy.NONE,
                ModuleText.population(BOARD, "A1: " + module + " DDR4 DIMM"));
    }

    private static Weight weight(String system, String module) {
        return Judged.verdict(new SystemUses(), setup(system, module)).weight();
    }

    @Test
    void anEditionUsesNoMoreThanItsLimit() {
        assertEquals(Weight.LOWERS, weight("Windows 7 Professional 32-bit", "8GB"));
        assertEquals(Weight.PASSES, weight("Microsoft Windows 10 Pro x64", "64GB"));
        assertEquals(Weight.LOWERS, weight("Win10 Home (64 bit)", "256GB"));
        assertEquals(Weight.LOWERS, weight("Windows 7 Home Basic 64-bit", "16GB"));
        assertEquals(Weight.LOWERS, weight("Windows Server 2008 R2 Standard", "64GB"));
    }

    @Test
    void usableMemoryIsWhatTheEditionUses() {
        assertEquals(Capacity.ofGiB(4),
                Judged.verdict(new SystemUses(), setup("Windows 10 Pro 32-bit", "8GB")).operation().usable());
        assertEquals(Capacity.ofGiB(8),
                Judged.verdict(new SystemUses(), setup("Windows 10 Pro", "8GB")).operation().usable());
    }

    @Test
    void onlyWhatTheSystemIsOfferedCounts() {
        Board mirrored = BoardText.board("none", """
                channel A 1 A1
                channel B 1 B1
                takes DDR3 DIMM
                redundancy MIRRORED share=1/2
                """);
        Setup setup = new Setup(mirrored, 1, Optional.empty(), Optional.of("Windows Server 2008 R2 Standard"),
                Redundancy.MIRRORED, ModuleText.population(mirrored, "A1 B1: 32GB DDR3 DIMM"));
        assertEquals(Weight.PASSES, Judged.verdict(new SystemUses(), setup).weight());
        Setup more = setup.with(ModuleText.population(mirrored, "A1 B1: 64GB DDR3 DIMM"));
        assertEquals("Windows Server 2008 R2 Standard uses 32 GB of the 64 GB it is offered.",
                Judged.verdict(new SystemUses(), more).reasons().get(0).sentence());
    }

    @Test
    void aNameThatLeavesTheLimitOpenIsACaution() {
        assertEquals(Weight.CAUTION, weight("Windows 10 Pro", "8GB"));
        assertEquals(Weight.PASSES, weight("Windows 10 Pro", "4GB"));
        assertEquals(Weight.CAUTION, weight("Windows 11", "256GB"));
    }

    @Test
    void otherSystemsAndReleasesSayNothing() {
        assertEquals(Weight.PASSES, weight("Debian 12", "256GB"));
        assertEquals(Weight.PASSES, weight("Windows 8.1 Pro", "256GB"));
    }
}
