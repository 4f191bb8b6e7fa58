package slotledger.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.trade.Target;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.standard.StandardRules;

class TargetsTest {

    private static final Board SERVER = BoardText.board("none", """
            form server
            channel A 1 A1
            channel B 1 B1
            channel C 1 C1
            takes DDR3 DIMM registered ecc=REQUIRED
            redundancy MIRRORED share=1/2 ignored=C set=1:A1,B1
            """);
    private static final Board TWO_CHANNELS_A_MODULE = BoardText.board("none", """
            channel A 1 spans=2 R1 R2
            takes RDRAM RIMM_232
            fill blank=CONTINUITY_232
            """);

    private final MemoryRules rules = StandardRules.create();

    private List<String> shortfalls(Board board, Redundancy redundancy, String population, String target) {
        Setup setup = new Setup(board, 1, Optional.empty(), Optional.empty(), redundancy,
                ModuleText.population(board, population));
        return Targets.shortfalls(
                new Target("role", ModuleText.capacity(target), true, false, Optional.empty(), 1),
                setup, rules.operate(setup));
    }

    @Test
    void aMirroredMachineReachesItsTargetByWhatIsUsable() {
        String two = "A1 B1: 8GB DDR3-1333 DIMM 2Rx4 registered ECC";
        assertEquals(List.of("8 GB usable memory instead of 16 GB"),
                shortfalls(SERVER, Redundancy.MIRRORED, two, "16GB"));
        assertEquals(List.of(), shortfalls(SERVER, Redundancy.MIRRORED, two, "8GB"));
    }

    @Test
    void aChannelThatDoesNotCountWhileMemoryIsKeptBackNeedsNoMemory() {
        String two = "A1 B1: 8GB DDR3-1333 DIMM 2Rx4 registered ECC";
        assertEquals(1, shortfalls(SERVER, Redundancy.NONE, two, "8GB").size());
        assertEquals(List.of(), shortfalls(SERVER, Redundancy.MIRRORED, two, "8GB"));
    }

    @Test
    void aModuleThatCarriesTwoChannelsFillsBoth() {
        assertEquals(List.of(), shortfalls(TWO_CHANNELS_A_MODULE, Redundancy.NONE,
                "R1: 256MB RDRAM-1066 RIMM_232 x16 256Mbit; R2: CONTINUITY_232", "256MB"));
    }
}
