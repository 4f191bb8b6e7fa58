package slotledger.catalog.internal.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import slotledger.catalog.internal.match.BoardEntry;
import slotledger.catalog.spi.BoardFile;
import slotledger.model.board.Banks;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.BoardForm;
import slotledger.model.board.BoardId;
import slotledger.model.board.Channel;
import slotledger.model.board.Fill;
import slotledger.model.board.Interleave;
import slotledger.model.board.Processor;
import slotledger.model.board.RateLimit;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.board.Takes;
import slotledger.model.finding.Finding;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;

/**
 * What one board file says: a board, or findings about what is wrong in it. A board with a doubtful fact is no board.
 *
 * @param entry    the board with the names it goes by
 * @param findings what is wrong, in the order of the file's fields
 */
public record BoardReading(Optional<BoardEntry> entry, List<Finding> findings) {

    private static final List<String> KEYS = List.of(
            "format", "board", "maker", "maker-aliases", "model", "aliases", "form", "source", "sources",
            "processor-sockets", "processors", "channels", "slots", "banks", "takes", "largest-total", "addressable",
            "fill", "redundancy", "interleave", "rate-limits", "notes");
    private static final int MOST_PROCESSORS = 8;

    public BoardReading {
        findings = List.copyOf(findings);
    }

    public static BoardReading of(BoardFile file) {
        Problems problems = new Problems(file.name());
        Optional<BoardEntry> entry = YamlText.read(file.text(), problems, file.name())
                .flatMap(root -> root.fields(KEYS))
                .flatMap(fields -> read(fields, problems, file.name()));
        return new BoardReading(problems.isEmpty() ? entry : Optional.empty(), problems.findings());
    }

    private static Optional<BoardEntry> read(Fields fields, Problems problems, String file) {
        fields.find("format").ifPresent(value -> value.number(1, 1));
        Optional<BoardId> id = fields.require("board", "kestrin-kb410").flatMap(value -> value.parsed(
                text -> text.matches("[a-z0-9][a-z0-9.-]{0,63}") ? Optional.of(new BoardId(text)) : Optional.empty(),
                "1 to 64 lower-case letters, digits, dots or hyphens"));
        Optional<String> maker = fields.require("maker", "Kestrin").flatMap(Value::text);
        Optional<String> model = fields.require("model", "KB-410").flatMap(Value::text);
        Optional<BoardForm> form = fields.require("form", "desktop").flatMap(value -> value.word(Words.BOARD_FORMS));
        Optional<Source> source = fields.require("source", "from memory").flatMap(SourceReading::source);
        int sockets = fields.find("processor-sockets")
                .map(value -> value.number(1, MOST_PROCESSORS).orElse(1))
                .orElse(1);
        SlotReading slots =
                new SlotReading(fields.require("channels", "{A: [DIMM1, DIMM2]}"), fields.find("slots"), sockets);
        fields.require("takes", "{generation: DDR4, form: DIMM}");
        List<Takes> takes = list(fields, "takes", way -> TakesReading.takes(way, slots));
        checkAny(fields, "channels", problems.isEmpty() && slots.slots().isEmpty());
        checkAny(fields, "takes", problems.isEmpty() && takes.isEmpty());
        List<Processor> processors = list(fields, "processors", LimitReading::processor);
        List<RateLimit> rateLimits = list(fields, "rate-limits", LimitReading::rateLimit);
        Optional<Capacity> largestTotal = capacity(fields, "largest-total");
        Optional<Capacity> addressable = capacity(fields, "addressable");
        FillReading filling = new FillReading(slots, sockets, takes);
        Fill fill = fields.find("fill").flatMap(filling::fill).orElseGet(filling::silent);
        Banks banks = fields.find("banks").flatMap(new BankReading(slots)::banks).orElse(Banks.NONE);
        List<RedundancyTerms> redundancies = fields.find("redundancy")
                .map(new RedundancyReading(slots, sockets)::terms)
                .orElse(List.of());
        List<Channel> channels = slots.channels(takes);
        Interleave interleave = fields.find("interleave")
                .flatMap(value -> value.word(Words.INTERLEAVES))
                .orElseGet(() -> interleave(channels));
        Map<BoardFact, Source> sources = fields.find("sources").map(SourceReading::sources).orElse(Map.of());
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        Board board = new Board(
                id.orElseThrow(), maker.orElseThrow(), model.orElseThrow(), texts(fields, "aliases"),
                form.orElseThrow(), sockets, processors, channels, slots.slots(), takes, largestTotal, addressable,
                fill, banks, redundancies, interleave, rateLimits, texts(fields, "notes"), source.orElseThrow(),
                sources);
        return Optional.of(new BoardEntry(board, texts(fields, "maker-aliases"), file));
    }

    private static Interleave interleave(List<Channel> channels) {
        if (channels.size() != 1) {
            return Interleave.UNKNOWN;
        }
        // The channels that one module carries always hold the same.
        return channels.get(0).spans() > 1 ? Interleave.EQUAL_ONLY : Interleave.NONE;
    }

    private static Optional<Capacity> capacity(Fields fields, String name) {
        return fields.find(name).flatMap(value -> value.parsed(Measures::capacity, Measures.CAPACITY));
    }

    private static void checkAny(Fields fields, String name, boolean none) {
        fields.find(name).filter(value -> none).ifPresent(value -> value.problem(
                "Nothing under \"%s\" can be used.".formatted(name), "Compare it with the template of a board file."));
    }

    private static <T> List<T> list(Fields fields, String name, Function<Value, Optional<T>> item) {
        return fields.find(name)
                .map(value -> value.items().stream().flatMap(one -> item.apply(one).stream()).toList())
                .orElse(List.of());
    }

    private static List<String> texts(Fields fields, String name) {
        return fields.find(name).map(Value::texts).orElse(List.of());
    }
}
