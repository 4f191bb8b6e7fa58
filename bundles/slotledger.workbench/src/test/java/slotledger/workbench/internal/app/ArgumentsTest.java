package slotledger.workbench.internal.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ArgumentsTest {

    @Test
    void theFolderOfAProjectMayHaveBlanks() {
        assertEquals(new Arguments(Optional.of(Path.of("Spring order")), Optional.empty()),
                Arguments.of(new String[] {"=-project", "=Spring order"}));
    }

    @Test
    void whatTheFrameworkIsGivenIsNotOurs() {
        assertEquals(new Arguments(Optional.empty(), Optional.empty()),
                Arguments.of(new String[] {"-configuration", "somewhere"}));
    }

    @Test
    void anythingElseIsUnknown() {
        assertEquals(Optional.of("-project"), Arguments.of(new String[] {"=-project"}).unknown());
        assertEquals(Optional.of("-clean"), Arguments.of(new String[] {"=-clean"}).unknown());
        assertEquals(Optional.of("more"), Arguments.of(new String[] {"=-project", "=x", "=more"}).unknown());
    }
}
