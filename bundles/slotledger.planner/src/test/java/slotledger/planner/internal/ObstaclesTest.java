package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.module.Piece;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Shelf;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;

/** What an obstacle says would free a machine is carried out, with all others as planned; a bit less is not enough. */
class ObstaclesTest {

    private static final Pattern BUDGET = Pattern.compile("EUR (\\d+)\\.(\\d\\d) more budget\\.");
    private static final Pattern PIECES = Pattern.compile("(\\d+) x (.+?)(?: and |, | more)");

    private final Planning planning = new Planning(new PlainRules(), new ScipSolver());

    /** Whether the machine is on target where all others end as in the plan. */
    private boolean reaches(PlanRequest request, Plan plan, AssetTag wanted) throws PlannerException {
        Listed listed = planning.list(request, Progress.NONE);
        for (MachinePlan each : plan.machines()) {
            AssetTag tag = each.machine().tag();
            if (!tag.equals(wanted)) {
                listed = listed.pinned(tag, candidate(listed, each));
            }
        }
        Optional<Solved> solved = planning.search(listed, Progress.NONE);
        if (solved.isEmpty()) {
            return false;
        }
        long missed = solved.get().missed().value();
        assertTrue(solved.get().missed().isProven());
        return missed == 0;
    }

    private static Candidate candidate(Listed listed, MachinePlan plan) {
        Options options = listed.options().stream()
                .filter(each -> each.group().machines().contains(plan.machine())).findFirst().orElseThrow();
        return options.candidates().stream()
                .filter(each -> each.after().equals(plan.after())).findFirst().orElseThrow();
    }

    @Test
    void aBudgetThatIsSaidToBeLargeEnoughIsAndACentLessIsNot() throws PlannerException {
        int tried = 0;
        for (int seed = 1; seed <= 80; seed++) {
            PlanRequest request = BruteForceTest.fleet(new Random(seed));
            Plan plan = planning.plan(request, Progress.NONE);
            for (MachinePlan machine : plan.machines()) {
                Optional<Matcher> more = machine.obstacle().filter(each -> each.kind() == Obstacle.Kind.BUDGET)
                        .map(each -> BUDGET.matcher(each.freedBy())).filter(Matcher::matches);
                if (more.isEmpty()) {
                    continue;
                }
                long minor = Long.parseLong(more.get().group(1) + more.get().group(2));
                AssetTag tag = machine.machine().tag();
                assertTrue(reaches(withMore(request, minor), plan, tag), "fleet " + seed + " " + machine.obstacle());
                assertTrue(!reaches(withMore(request, minor - 1), plan, tag), "fleet " + seed + " a cent less");
                tried++;
            }
        }
        assertTrue(tried > 5, tried + " tried");
    }

    private static PlanRequest withMore(PlanRequest request, long minor) {
        return request.with(request.policy().withBudget(
                request.policy().budget().map(budget -> budget.plus(Fixtures.eur(minor)))));
    }

    @Test
    void modulesThatAreSaidToBeEnoughAreAndOneLessIsNot() throws PlannerException {
        int tried = 0;
        for (int seed = 1; seed <= 80; seed++) {
            PlanRequest request = BruteForceTest.fleet(new Random(seed));
            Plan plan = planning.plan(request, Progress.NONE);
            for (MachinePlan machine : plan.machines()) {
                if (machine.obstacle().filter(each -> each.kind() == Obstacle.Kind.STOCK).isEmpty()) {
                    continue;
                }
                Map<Piece, Integer> pieces = pieces(request, machine.obstacle().get().freedBy());
                AssetTag tag = machine.machine().tag();
                assertTrue(reaches(withMore(request, pieces), plan, tag), "fleet " + seed + " " + machine.obstacle());
                for (Piece piece : pieces.keySet()) {
                    Map<Piece, Integer> less = new LinkedHashMap<>(pieces);
                    less.merge(piece, -1, Integer::sum);
                    assertTrue(!reaches(withMore(request, less), plan, tag), "fleet " + seed + " one less");
                }
                tried++;
            }
        }
        assertTrue(tried > 5, tried + " tried");
    }

    private Map<Piece, Integer> pieces(PlanRequest request, String freedBy) throws PlannerException {
        Map<Piece, Integer> pieces = new LinkedHashMap<>();
        for (Piece piece : planning.list(request, Progress.NONE).stock().pieces()) {
            Matcher lack = PIECES.matcher(freedBy);
            while (lack.find()) {
                if (freedBy.contains(lack.group(1) + " x " + piece + " ")) {
                    pieces.put(piece, Integer.parseInt(lack.group(1)));
                }
            }
        }
        assertTrue(!pieces.isEmpty(), freedBy);
        return pieces;
    }

    private static PlanRequest withMore(PlanRequest request, Map<Piece, Integer> pieces) {
        Map<Piece, Integer> shelf = new LinkedHashMap<>(request.shelf().pieces());
        pieces.forEach((piece, count) -> shelf.merge(piece, count, Integer::sum));
        shelf.values().removeIf(count -> count == 0);
        return new PlanRequest(request.title(), request.fleet(), request.market(), new Shelf(shelf),
                request.policy(), request.date());
    }

    @Test
    void deliverySparesPacksAndPriceStepsCountInWhatIsLacking() throws PlannerException {
        Fixtures made = new Fixtures();
        made.target("pc", 8, 1);
        for (int i = 0; i < 2; i++) {
            made.machine("M" + i, made.board("one", 2, 8, 16, 1), "pc", Fixtures.kind(4));
        }
        made.sparePercent = 10;
        made.offer("Alder", Fixtures.kind(4), 2, -1, 1, 3000, 2, 2600);
        made.terms("Alder", 500, 5000, -1);
        made.shelf.put(Fixtures.kind(4), 1);
        made.budget = Optional.of(Fixtures.eur(1000));
        Plan plan = planning.plan(made.request(), Progress.NONE);
        Obstacle obstacle = plan.find(new AssetTag("M1")).orElseThrow().obstacle().orElseThrow();
        assertEquals("To bring it to its target as well would cost EUR 35.00 more for goods and delivery; EUR 10.00 of"
                + " the budget of EUR 10.00 are left after all other machines.", obstacle.message());
        assertEquals("EUR 25.00 more budget.", obstacle.freedBy());
    }

    @Test
    void aCostCentreThatIsShortIsNamedWithWhatItLacks() throws PlannerException {
        Fixtures made = new Fixtures();
        made.target("pc", 8, 1);
        made.machine("M1", made.board("one", 2, 8, 16, 1), "pc", "Science", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 2, -1, 1, 3001);
        made.centreBudgets.put("Science", Fixtures.eur(1000));
        made.budget = Optional.of(Fixtures.eur(2000));
        Plan plan = planning.plan(made.request(), Progress.NONE);
        Obstacle obstacle = plan.machines().get(0).obstacle().orElseThrow();
        assertEquals("EUR 5.01 more budget for cost centre Science and EUR 10.01 more budget.", obstacle.freedBy());
    }

    private static final Pattern TERMS = Pattern.compile(
            "(?:EUR (\\d+)\\.(\\d\\d) more budget)?(?: and )?(?:[Ll]eave to open (\\d+) more machines?)?\\.");

    private static PlanRequest withMore(PlanRequest request, long minor, int opened) {
        Choices choices = request.choices();
        OptionalInt most = choices.mostOpened().isEmpty()
                ? OptionalInt.empty() : OptionalInt.of(choices.mostOpened().getAsInt() + opened);
        return withMore(request, minor)
                .with(new Choices(choices.pins(), choices.tastes(), choices.uniform(), most));
    }

    /** Whether the machine can end on target where all others end as planned, but for those of its uniform room. */
    private boolean canReach(PlanRequest request, Plan plan, Machine wanted) throws PlannerException {
        Listed listed = planning.list(request, Progress.NONE);
        for (MachinePlan each : plan.machines()) {
            Machine other = each.machine();
            boolean isSameRoom = request.choices().uniformRoom(wanted).isPresent()
                    && other.where().equals(wanted.where()) && other.board().equals(wanted.board());
            if (!other.equals(wanted) && !isSameRoom) {
                listed = listed.pinned(other.tag(), candidate(listed, each));
            }
        }
        return planning.search(listed.with(listed.options().stream()
                .map(each -> !each.group().machines().contains(wanted) ? each : each.of(each.group().machines(),
                        each.candidates().stream().filter(Candidate::onTarget).toList()))
                .toList()), Progress.NONE).isPresent();
    }

    @Test
    void whatUniformRoomsAndTheMostOpenedAskForIsEnoughAndLessIsNot() throws PlannerException {
        int rooms = 0;
        int opened = 0;
        for (int seed = 6001; seed < 6151; seed++) {
            PlanRequest request = BruteForceChoicesTest.decided(BruteForceTest.fleet(new Random(seed)),
                    new Random(seed));
            Plan plan;
            try {
                plan = planning.plan(request, Progress.NONE);
            } catch (PlannerException refusal) {
                continue;
            }
            for (MachinePlan machine : plan.machines()) {
                Optional<Matcher> terms = machine.obstacle()
                        .filter(each -> each.message().startsWith("To bring it to its target"))
                        .map(each -> TERMS.matcher(each.freedBy())).filter(Matcher::matches);
                boolean isRoom = machine.obstacle().filter(each -> each.message().contains("kept uniform")).isPresent();
                if (terms.isEmpty() || !isRoom && terms.get().group(3) == null) {
                    continue;
                }
                String euros = terms.get().group(1);
                long minor = euros == null ? 0 : Long.parseLong(euros + terms.get().group(2));
                int more = terms.get().group(3) == null ? 0 : Integer.parseInt(terms.get().group(3));
                String place = "fleet " + seed + " " + machine.machine().tag() + " " + machine.obstacle();
                Machine wanted = machine.machine();
                assertTrue(canReach(withMore(request, minor, more), plan, wanted), place);
                assertTrue(minor == 0 || !canReach(withMore(request, minor - 1, more), plan, wanted), place);
                assertTrue(more != 1 || isRoom || !canReach(withMore(request, minor, 0), plan, wanted), place);
                rooms += isRoom ? 1 : 0;
                opened += more > 0 ? 1 : 0;
            }
        }
        System.out.printf("%d freed with their room, %d by opening more%n", rooms, opened);
        assertTrue(rooms > 5 && opened > 5, rooms + " rooms, " + opened + " opened");
    }
}
