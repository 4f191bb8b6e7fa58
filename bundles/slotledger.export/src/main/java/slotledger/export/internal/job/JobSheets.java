package slotledger.export.internal.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slotledger.export.PlanBook;
import slotledger.export.internal.round.Partners;
import slotledger.export.internal.round.Round;
import slotledger.export.internal.text.Lists;
import slotledger.export.internal.text.Words;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Channel;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.family.Families;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Population;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;
import slotledger.model.source.Source;
import slotledger.model.trade.Target;
import slotledger.model.verdict.Operation;

/** Makes the job sheets of a plan. */
public final class JobSheets {

    private static final int MOST_DOUBTS = 4;

    private final PlanBook book;
    private final Partners partners;
    private final Map<AssetTag, Integer> numbers = new HashMap<>();

    public JobSheets(PlanBook book) {
        this.book = book;
        this.partners = new Partners(book.plan());
        Round.of(book.plan()).forEach(stop -> stop.machines()
                .forEach(plan -> numbers.put(plan.machine().tag(), numbers.size() + 1)));
    }

    /** One sheet for each machine that is opened, by site, room and place on the round. */
    public List<JobSheet> all() {
        return book.plan().work().stream()
                .sorted(Comparator.comparing((MachinePlan plan) -> plan.machine().where())
                        .thenComparingInt(this::number))
                .map(this::sheet)
                .toList();
    }

    /** Its number on the round. */
    private int number(MachinePlan plan) {
        return numbers.get(plan.machine().tag());
    }

    JobSheet sheet(MachinePlan plan) {
        Board board = book.boards().get(plan.machine().board());
        if (board == null) {
            throw new IllegalArgumentException("The board %s of machine %s must be in the book."
                    .formatted(plan.machine().board(), plan.machine().tag()));
        }
        List<SlotState> before = states(plan, board, plan.before(), true);
        List<SlotState> after = states(plan, board, plan.after(), false);
        List<SlotState> received = after.stream().filter(state -> state.mark() == Mark.PUT_IN)
                .filter(state -> state.content().module().isPresent())
                .toList();
        return new JobSheet(plan, board, number(plan) + " of " + numbers.size(), before, after,
                board.channels().stream().map(Channel::name).toList(), heed(plan), Cautions.of(plan, board.form()),
                new Steps(book, partners, plan).lines(board.slots()), StepBack.of(plan), expected(plan),
                Firmware.lines(plan, board, after), received, board.notes(), sources(board));
    }

    private static List<SlotState> states(MachinePlan plan, Board board, Population population, boolean before) {
        return board.slots().stream()
                .map(slot -> new SlotState(slot, population.in(slot.label()), mark(plan, slot, population, before)))
                .toList();
    }

    private static Mark mark(MachinePlan plan, Slot slot, Population population, boolean before) {
        if (slot.use() == SlotUse.DEAD) {
            return Mark.DEAD;
        }
        if (slot.use() == SlotUse.SOLDERED) {
            return Mark.SOLDERED;
        }
        Station here = new Station.InSlot(plan.machine().tag(), slot.label());
        for (Move move : plan.moves()) {
            if (here.equals(before ? move.from() : move.to())) {
                boolean within = before ? isIn(move.to(), plan) : isIn(move.from(), plan);
                if (before) {
                    return within ? Mark.MOVES : Mark.TAKE_OUT;
                }
                return within ? Mark.MOVED : Mark.PUT_IN;
            }
        }
        return population.in(slot.label()).isEmpty() ? Mark.EMPTY : Mark.STAYS;
    }

    private static boolean isIn(Station station, MachinePlan plan) {
        return station instanceof Station.InSlot in && in.machine().equals(plan.machine().tag());
    }

    private List<Line> heed(MachinePlan plan) {
        List<Line> lines = new ArrayList<>();
        names(lines, "Do these first, modules come from them: ", partners.before(plan), ".");
        names(lines, "Modules go from here to: ", partners.receivers(plan), ".");
        names(lines, "This machine is opened before what goes into it is there. It waits for: ", partners.late(plan),
                ". Leave it open until the last of them is done, or borrow a set like it, and give that back then.");
        for (Finding doubt : Lists.about(plan, book.findings()).stream().limit(MOST_DOUBTS).toList()) {
            lines.add(Line.of("The inventory is in doubt: " + Lists.matter(doubt) + " " + doubt.remedy()));
        }
        return lines;
    }

    private static void names(List<Line> lines, String text, List<String> names, String end) {
        if (names.isEmpty()) {
            return;
        }
        List<String> parts = new ArrayList<>(List.of(text));
        for (String name : names) {
            if (parts.size() > 1) {
                parts.add(", ");
            }
            parts.add(name);
        }
        parts.add(end);
        lines.add(Line.of(parts.toArray(String[]::new)));
    }

    private static List<Line> expected(MachinePlan plan) {
        Operation after = plan.runsAfter();
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of("Installed: ", Words.bothUnits(after.installed()),
                " (now " + plan.runsNow().installed() + ")"));
        lines.add(Line.of("Usable: ", after.usable().toString(),
                after.usable().equals(after.installed()) ? "; hardware may keep a small share" : lessUsable(plan)));
        lines.add(Line.of("Mode: ", after.mode().toString()));
        lines.add(rate(plan));
        if (after.rate().isPresent()) {
            lines.add(Line.of("Peak bandwidth: ", after.peak().toString()));
        }
        lines.add(Line.of("Errors checked and corrected (ECC): ", after.ecc() ? "yes" : "no"));
        lines.add(Line.of("Target of " + plan.target().map(Target::role).orElse("the role") + ": ",
                Words.target(plan.target()), "; after the work: " + plan.outcome().text()));
        return lines;
    }

    private static String lessUsable(MachinePlan plan) {
        return switch (plan.machine().redundancy()) {
            case MIRRORED -> "; memory is mirrored: the rest holds a copy";
            case SPARED -> "; firmware keeps memory in reserve";
            case NONE -> "; a limit of firmware, processor or operating system";
        };
    }

    /** SIMMs have an access time where others have a rate: nothing is missing there. */
    private static Line rate(MachinePlan plan) {
        Operation after = plan.runsAfter();
        String why = after.rateWhy().isEmpty() ? "" : ". " + after.rateWhy();
        if (after.rate().isPresent()) {
            return Line.of("Rate: ", after.rate().get().toString(), why);
        }
        List<ModuleKind> modules = plan.after().modules();
        boolean byAccessTime = !modules.isEmpty() && modules.stream().allMatch(kind -> kind.generation()
                .filter(known -> Families.grades(known).isEmpty()).isPresent());
        return byAccessTime && !why.isEmpty() ? Line.of(after.rateWhy()) : Line.of("Rate: ", "not known", why);
    }

    private static List<String> sources(Board board) {
        Set<String> lines = new LinkedHashSet<>();
        lines.add(board.source().toString());
        for (BoardFact fact : List.of(BoardFact.SLOTS, BoardFact.CHANNELS, BoardFact.FILL, BoardFact.ACCESS)) {
            Source source = board.sourceOf(fact);
            if (!source.equals(board.source())) {
                lines.add(Words.fact(fact) + ": " + source);
            }
        }
        return List.copyOf(lines);
    }
}
