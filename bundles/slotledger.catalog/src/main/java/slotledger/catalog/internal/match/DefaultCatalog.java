package slotledger.catalog.internal.match;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import slotledger.catalog.BoardMatch;
import slotledger.catalog.BoardMatch.By;
import slotledger.catalog.Catalog;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;

/** Boards in memory, found by their names: as written, else by alias, else normalised; never by likeness. */
public final class DefaultCatalog implements Catalog {

    private static final int MOST_SUGGESTIONS = 3;
    private static final double ALIKE = 0.6;

    private final Map<BoardId, BoardEntry> entries = new TreeMap<>();
    private final Map<String, Set<String>> makerNames = new HashMap<>();

    /** A later entry replaces an earlier one of the same id. */
    public DefaultCatalog(Collection<BoardEntry> entries) {
        entries.forEach(entry -> this.entries.put(entry.board().id(), entry));
        // An alias given in one file of a maker holds for all its boards.
        this.entries.values().forEach(entry -> entry.makers().forEach(name -> makerNames
                .computeIfAbsent(Names.normalisedMaker(entry.board().maker()), maker -> new HashSet<>())
                .add(Names.normalisedMaker(name))));
    }

    @Override
    public List<Board> boards() {
        return entries.values().stream().map(BoardEntry::board).toList();
    }

    @Override
    public Optional<Board> find(BoardId id) {
        return Optional.ofNullable(entries.get(id)).map(BoardEntry::board);
    }

    @Override
    public BoardMatch match(String maker, String model) {
        String knownMaker = Names.isPlaceholder(maker) ? "" : maker.strip();
        String knownModel = Names.isPlaceholder(model) ? "" : model.strip();
        if (knownModel.isEmpty()) {
            // A whole name in the maker's column is as good as any; a maker alone is none.
            return knownMaker.isEmpty() ? new BoardMatch.NotFound(List.of()) : match("", knownMaker);
        }
        List<Board> named = which(knownMaker, (entry, ours) -> entry.board().model().equals(knownModel)
                || entry.board().name().equals(knownModel));
        if (named.isEmpty()) {
            List<Board> aliased = which(knownMaker, (entry, ours) -> entry.board().aliases().contains(knownModel));
            return aliased.isEmpty() ? normalised(knownMaker, knownModel) : one(aliased, By.ALIAS);
        }
        return one(named, By.NAME);
    }

    private BoardMatch normalised(String maker, String model) {
        String wanted = Names.normalised(model);
        List<Board> boards = which(maker, (entry, makers) -> entry.names().map(Names::normalised).anyMatch(
                name -> name.equals(wanted) || makers.stream().anyMatch(ours -> (ours + name).equals(wanted))));
        return boards.isEmpty() ? new BoardMatch.NotFound(suggestions(maker, model)) : one(boards, By.NORMALISED_NAME);
    }

    private static BoardMatch one(List<Board> boards, By by) {
        return boards.size() == 1 ? new BoardMatch.Found(boards.get(0), by) : new BoardMatch.NotFound(boards);
    }

    private List<Board> which(String maker, BiPredicate<BoardEntry, Set<String>> named) {
        String wanted = Names.normalisedMaker(maker);
        return entries.values().stream()
                .filter(entry -> wanted.isEmpty() || makersOf(entry).contains(wanted))
                .filter(entry -> named.test(entry, makersOf(entry)))
                .map(BoardEntry::board)
                .toList();
    }

    private Set<String> makersOf(BoardEntry entry) {
        return makerNames.get(Names.normalisedMaker(entry.board().maker()));
    }

    private List<Board> suggestions(String maker, String model) {
        record Scored(Board board, double score) {
        }
        return entries.values().stream()
                .map(entry -> new Scored(entry.board(), likeness(entry, maker, model)))
                .filter(scored -> scored.score() >= ALIKE)
                .sorted(Comparator.comparingDouble(Scored::score).reversed()
                        .thenComparing(scored -> scored.board().id()))
                .limit(MOST_SUGGESTIONS)
                .map(Scored::board)
                .toList();
    }

    private double likeness(BoardEntry entry, String maker, String model) {
        String wanted = Names.lookalike(model);
        Stream<String> names = entry.names().flatMap(name -> Stream.concat(
                Stream.of(Names.lookalike(name)), makersOf(entry).stream().map(ours -> Names.lookalike(ours + name))));
        double name = names.mapToDouble(candidate -> Similarity.of(candidate, wanted)).max().orElse(0);
        boolean sameMaker = maker.isEmpty() || makersOf(entry).contains(Names.normalisedMaker(maker));
        // A like name of the same maker comes before one of another.
        return sameMaker ? name : name - 0.1;
    }
}
