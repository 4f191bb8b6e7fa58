package slotledger.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slotledger.model.matrix.BoardMatrix;

class MatrixTextTest {

    @Test
    void fewSocketsAreToldInWords() {
        String text = text(SmallMatrix.of("S1", "S2"));
        assertTrue(text.contains("""
                Board        Tarn 210  (Manual, page 3)
                Modules      3 kinds: 1 go in somewhere, 1 unknown, 1 go in nowhere
                             Chips: soldered, 4 GB; nothing goes in
                             X: dead, not wired; nothing goes in
                """), text);
        assertTrue(text.contains("   1 8 GB DDR4-2400 DIMM, non-ECC  "), text);
        assertTrue(text.contains(" passes    passes    passes 2\n"), text);
        assertTrue(text.contains(" unknown   unknown   unknown 2\n"), text);
        assertTrue(text.contains(" blocks: generation\n"), text);
    }

    @Test
    void whatStandsInTheWaySaysWhomItConcernsWhoSaysSoAndWhatToDo() {
        String text = text(SmallMatrix.of("S1", "S2"));
        assertTrue(text.contains("""
                unknown  ecc: module 2. For example:
                         The module in slot S1 is of ecc something.
                         [ecc; Manual, page 3]
                         Missing: whether a module has check bits.
                """), text);
        assertTrue(text.contains("         - caution  Its notch sits elsewhere.\n"), text);
    }

    @Test
    void manySocketsAreToldInSignsAndNoLineIsLongerThanATerminal() {
        String[] sockets = IntStream.rangeClosed(1, 24).mapToObj(i -> "P" + (i + 11) / 12 + "-D" + i)
                .toArray(String[]::new);
        String text = text(SmallMatrix.of(sockets));
        assertTrue(text.contains("+ passes, ! caution, - lowers, ? unknown, x blocks; a number: "), text);
        text.lines().forEach(line -> assertTrue(line.length() <= Wrapped.WIDTH, line));
        for (String socket : sockets) {
            assertEquals(1, text.lines().filter(line -> line.startsWith("     Module"))
                    .filter(line -> List.of(line.split(" +")).contains(socket)).count(), socket);
        }
        assertTrue(text.contains(" +24"), text);
    }

    @Test
    void numbersInARowAreShortened() {
        assertEquals("1-3, 5, 6, 9", MatrixText.ranges(List.of(1, 2, 3, 5, 6, 9)));
        assertEquals("4", MatrixText.ranges(List.of(4)));
    }

    @Test
    void theFactsObeyTheirPublishedSchema() throws Exception {
        assertEquals(List.of(), problems(facts(SmallMatrix.of("S1", "S2"))));
    }

    @Test
    void theSchemaRefusesWhatIsNeverPrinted() throws Exception {
        String good = facts(SmallMatrix.of("S1", "S2"));
        assertTrue(!problems(good.replace("\"weight\":\"blocks\"", "\"weight\":\"forbids\"")).isEmpty());
        assertTrue(!problems(good.replaceFirst("\"sentence\"", "\"phrase\"")).isEmpty());
        assertTrue(!problems(good.replaceFirst("\"tried\":false", "\"tried\":true")).isEmpty());
        assertTrue(!problems(good.replace("\"from\":[\"fleet\"]", "\"from\":[]")).isEmpty());
    }

    private static String facts(BoardMatrix matrix) throws Exception {
        return new ObjectMapper().writeValueAsString(MatrixFacts.of(matrix));
    }

    private static List<String> problems(String json) throws Exception {
        JsonSchema schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(MatrixCommand.schema());
        JsonNode node = new ObjectMapper().readTree(json);
        List<String> problems = new ArrayList<>();
        schema.validate(node).forEach(problem -> problems.add(problem.getMessage()));
        return problems;
    }

    private static String text(BoardMatrix matrix) {
        Answer.Builder answer = new Answer.Builder();
        new MatrixText(matrix).lines(answer);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        Console console = new Console(out, out, false);
        answer.end(ExitCode.OK).lines().forEach(line -> line.accept(console));
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
