package slotledger.catalog.internal.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import slotledger.catalog.BoardFormat;
import slotledger.catalog.internal.DemoBoards;
import slotledger.catalog.spi.BoardFile;

class BoardFormatTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(BoardFormat.schema());

    /** The fields every board needs; a broken one replaces or follows them. */
    private static final String SMALLEST = """
            board: kestrin-kb999
            maker: Kestrin
            model: KB-999
            form: desktop
            source: from memory
            channels: {A: [DIMM1], B: [DIMM2]}
            takes: {generation: DDR4, form: DIMM}
            """;

    private static Set<ValidationMessage> validate(String yaml) {
        Object tree = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        JsonNode node = MAPPER.valueToTree(tree);
        return SCHEMA.validate(node);
    }

    private static BoardReading read(String yaml) {
        return BoardReading.of(new BoardFile("board.yaml", yaml));
    }

    static Stream<Path> demoBoards() throws IOException {
        return Files.list(DemoBoards.folder()).sorted();
    }

    @ParameterizedTest
    @MethodSource("demoBoards")
    void everyDemoBoardObeysTheSchema(Path file) throws IOException {
        assertEquals(Set.of(), validate(Files.readString(file)));
    }

    @Test
    void theTemplateObeysTheSchemaAndReads() {
        assertEquals(Set.of(), validate(BoardFormat.template()));
        assertEquals(List.of(), read(BoardFormat.template()).findings());
    }

    @Test
    void theSmallestBoardObeysTheSchemaAndReads() {
        assertEquals(Set.of(), validate(SMALLEST));
        assertTrue(read(SMALLEST).entry().isPresent());
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "colour: blue",
        "form: phone",
        "format: 2",
        "largest-total: 8",
        "largest-total: 8 GiB",
        "largest-total: 0 GB or so",
        "interleave: sometimes",
        "takes: {generation: DDR4}",
        "takes: {generation: DDR9, form: DIMM}",
        "takes: {generation: DDR4, form: DIMM, voltage: 1.2}",
        "takes: {generation: DDR4, form: DIMM, rate: 2666 MHz}",
        "takes: {generation: DDR4, form: DIMM, chip-width: 8}",
        "takes: {generation: DDR4, form: DIMM, ecc: perhaps}",
        "takes: []",
        "channels: {}",
        "board: Kestrin KB-410",
        "source: {page: 12}",
        "source: somewhere",
        "source: {document: Manual, date: 1.3.2016}",
        "sources: {weight: from memory}",
        "fill: {table-only: yes}",
        "fill: {binding: maybe}",
        "fill: {sets-of: 0}",
        "rate-limits: [{modules-per-channel: 2}]",
        "rate-limits: [fast]",
        "processors: [{rate: 2400}]",
        "slots: [{colour: blue}]",
        "slots: [{label: DIMM1, soldered: {generation: DDR4}}, DIMM2]",
        "slots: [{label: DIMM1, use: dead, soldered: varies}, DIMM2]",
        "processor-sockets: 0",
        "banks: 0",
        "banks: wide",
        "banks: {width: 64}",
        "addressable: much",
        "channels: {A: {spans: 0, slots: [DIMM1]}, B: [DIMM2]}",
        "takes: {generation: DDR4, form: DIMM, tallest-stack: 0}",
        "takes: {generation: FPM, form: 72-pin SIMM, slowest-module: 70}",
        "takes: {generation: FPM, form: 72-pin SIMM, slowest-module: 0.5 ns}",
        "takes: {generation: FPM, form: 72-pin SIMM, contacts: silver}",
        "takes: {generation: FPM, form: 72-pin SIMM, parity: perhaps}",
        "takes: {generation: FPM, form: 72-pin SIMM, parity: used, ecc: used}",
        "slots: [{label: DIMM1, soldered: {capacity: 4 GB, generation: DDR4, stack: 0}}, DIMM2]",
        "slots: [{label: DIMM1, soldered: {capacity: 4 MB, generation: FPM, access-time: fast}}, DIMM2]",
        "fill: {ranks-first: maybe}",
        "fill: {empty-sockets: air}",
        "redundancy: {lockstep: {share: 1/2}}",
        "redundancy: {mirrored: {share: half}}",
        "redundancy: {mirrored: {share: 0/2}}",
        "redundancy: {mirrored: {sets: [{processors: 1}]}}",
        "redundancy: {spare: {channel-ranks: 0}}",
    })
    void whatTheSchemaRejectsTheReaderRejects(String field) {
        String key = field.substring(0, field.indexOf(':'));
        String yaml = SMALLEST.replaceAll("(?m)^" + key + ":.*\n", "") + field + "\n";

        assertFalse(validate(yaml).isEmpty(), "the schema accepts " + field);
        assertTrue(read(yaml).entry().isEmpty(), "the reader accepts " + field);
        assertFalse(read(yaml).findings().isEmpty(), "no finding for " + field);
    }

    @Test
    void theSchemaAndTheReaderKnowTheSameWords() throws IOException {
        JsonNode definitions = MAPPER.readTree(BoardFormat.schema()).get("$defs");
        Map<String, Map<String, ?>> words = Map.of(
                "contacts", Words.CONTACTS,
                "generation", Words.GENERATIONS,
                "moduleForm", Words.FORMS,
                "buffering", Words.BUFFERINGS,
                "chipWidth", Words.CHIP_WIDTHS,
                "errorCheck", Words.ERROR_CHECKS);

        words.forEach((name, known) ->
                assertEquals(new TreeSet<>(known.keySet()), texts(definitions.get(name).get("enum"))));
        assertEquals(new TreeSet<>(Words.FACTS.keySet()), names(definitions.get("sources").get("properties")));
        assertEquals(new TreeSet<>(Words.REDUNDANCIES.keySet()),
                names(definitions.get("redundancy").get("properties")));
        assertEquals(new TreeSet<>(FillReading.EMPTY_SOCKETS.keySet()),
                texts(definitions.get("fill").get("oneOf").get(1).get("properties").get("empty-sockets").get("enum")));
        JsonNode takes = definitions.get("takesOne").get("properties");
        for (String field : List.of("ecc", "parity")) {
            assertEquals(new TreeSet<>(Words.ECC_OUTCOMES.keySet()), texts(takes.get(field).get("enum")));
        }
    }

    @Test
    void everyFieldOfTheSchemaHasADescription() throws IOException {
        JsonNode schema = MAPPER.readTree(BoardFormat.schema());

        schema.findParents("properties").stream().filter(object -> object.has("type")).forEach(
                object -> object.get("properties").properties().forEach(
                        field -> assertTrue(isDescribed(schema, field.getValue()), field.getKey())));
    }

    private static boolean isDescribed(JsonNode schema, JsonNode field) {
        return field.has("description") || field.has("enum") || field.has("oneOf")
                || field.has("$ref") && schema.get("$defs").get(field.get("$ref").asText().replace("#/$defs/", ""))
                        .has("description");
    }

    private static Set<String> texts(JsonNode array) {
        Set<String> texts = new TreeSet<>();
        array.forEach(item -> texts.add(item.asText()));
        return texts;
    }

    private static Set<String> names(JsonNode object) {
        Set<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
