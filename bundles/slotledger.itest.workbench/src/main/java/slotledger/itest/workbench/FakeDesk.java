package slotledger.itest.workbench;

import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.propertytypes.ServiceRanking;
import slotledger.app.CoordinatorDesk;
import slotledger.app.DeskException;
import slotledger.app.FirmwareDesk;
import slotledger.app.FleetDesk;
import slotledger.app.Label;
import slotledger.app.LookAt;
import slotledger.app.PlanQuestions;
import slotledger.app.Project;
import slotledger.app.ProjectDesk;
import slotledger.app.RuleText;
import slotledger.app.Survey;
import slotledger.app.Trial;
import slotledger.app.WorkDesk;
import slotledger.app.WrittenGoal;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Settlement;
import slotledger.model.difference.Difference;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.module.Form;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Figures;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Spending;
import slotledger.model.plan.Station;
import slotledger.model.proof.Proof;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.task.Progress;
import slotledger.model.trade.Wave;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

/** A desk with a made-up fleet and a made-up plan, so that the window can be tested without files and solver. */
@Component
@ServiceRanking(1000)
public final class FakeDesk implements FleetDesk {

    private static final Money NOTHING = Money.zero(SampleFleet.EURO);

    private final FakeWork work;

    @Activate
    public FakeDesk(@Reference FakeWork work) {
        this.work = work;
    }

    @Override
    public Project open(Path folder) throws DeskException {
        if (!Files.isDirectory(folder)) {
            throw new DeskException(DeskException.Trouble.INPUT, "The folder %s is missing.".formatted(folder));
        }
        return SampleFleet.project(folder);
    }

    @Override
    public Survey survey(Project project, Progress progress) {
        progress.step("reading", 1);
        return SampleFleet.survey(project);
    }

    @Override
    public Verdict judge(Survey survey, Machine machine, Population population) {
        Reason reason = new Reason("made-up", Weight.CAUTION, "The socket next to the cooler is hard to reach.",
                List.of(), Source.of(Ground.PERSON), "Take the cooler's fan off first.", List.of(), Optional.empty());
        return new Verdict(Weight.CAUTION, operation(population), List.of(reason));
    }

    @Override
    public Operation operate(Survey survey, Machine machine) {
        return operation(machine.population());
    }

    @Override
    public Arithmetic workOut(Survey survey, Machine machine, Population population) {
        throw unused();
    }

    @Override
    public List<String> shortfalls(Survey survey, Machine machine) {
        return survey.policy().flatMap(policy -> policy.target(machine.role()))
                .filter(target -> !machine.population().total().atLeast(target.capacity()))
                .map(target -> List.of(machine.population().total() + " instead of " + target.capacity()))
                .orElse(List.of());
    }

    @Override
    public BoardMatrix matrix(Survey survey, String board, List<ModuleKind> kinds, Progress progress) {
        throw unused();
    }

    @Override
    public void writeMatrix(BoardMatrix matrix, Path file, boolean force) {
        throw unused();
    }

    /** PC-1's module changes its slot and gets a partner; each other desktop's module makes room for a new one. */
    @Override
    public PlanQuestions ask(Survey survey, Progress progress) {
        throw new UnsupportedOperationException();
    }

    @Override
    public BudgetCurve curve(Survey survey, int points, Consumer<BudgetCurve> soFar, Progress progress) {
        List<BudgetCurve.Point> found = new ArrayList<>();
        for (int brought = 0; brought < 4; brought++) {
            Money budget = new Money(brought * 50_000L, SampleFleet.EURO);
            found.add(new BudgetCurve.Point(budget,
                    new Figures(10 + brought * 9, 10 + brought * 9, 12 + brought * 9, budget, budget, budget)));
            soFar.accept(new BudgetCurve(found, Optional.empty(), 40));
        }
        return new BudgetCurve(found, Optional.empty(), 40);
    }

    @Override
    public void writeCurve(BudgetCurve curve, String title, Path file, boolean force) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Survey wave(Survey survey, Wave wave, Optional<Plan> before) {
        return survey;
    }

    @Override
    public Plan plan(Survey survey, Progress progress) {
        progress.step("choosing", 0.5);
        progress.check();
        List<MachinePlan> plans = new ArrayList<>();
        survey.fleet().machines().forEach(machine -> plans.add(plan(survey, machine, plans.size() + 1)));
        return new Plan("sample", survey.project().date(), survey.policy().orElseThrow(), plans, List.of(), List.of(),
                new Spending(NOTHING, Map.of(), NOTHING, Map.of()),
                new Optimality(1, 1, NOTHING, NOTHING, "none", List.of(), false), List.of());
    }

    private static MachinePlan plan(Survey survey, Machine machine, int order) {
        boolean desktop = machine.board().equals(SampleBoards.DESKTOP.id());
        ModuleKind large = SampleBoards.kind(8, desktop ? Form.DIMM : Form.SO_DIMM);
        List<Move> moves = new ArrayList<>();
        Population after = machine.population();
        if (machine.tag().value().equals("PC-1")) {
            SlotContent small = machine.population().in("A2");
            after = Population.empty(SampleBoards.DESKTOP).with("B2", small).with("A2", large);
            moves.add(new Move(small, slot(machine, "A2"), slot(machine, "B2")));
            moves.add(new Move(SlotContent.of(large), new Station.FromOrder("offer-1"), slot(machine, "A2")));
        } else if (desktop) {
            after = machine.population().with("A2", large);
            moves.add(new Move(machine.population().in("A2"), slot(machine, "A2"), new Station.OnShelf()));
            moves.add(new Move(SlotContent.of(large), new Station.FromOrder("offer-1"), slot(machine, "A2")));
        }
        return new MachinePlan(machine, survey.policy().orElseThrow().target(machine.role()), after,
                moves.isEmpty() ? Outcome.NOT_HELPED : Outcome.REACHES_TARGET, moves, operation(machine.population()),
                operation(after), Optional.empty(), NOTHING, moves.isEmpty() ? 0 : order);
    }

    private static Station slot(Machine machine, String label) {
        return new Station.InSlot(machine.tag(), label);
    }

    private static Operation operation(Population population) {
        Capacity total = population.total();
        return new Operation(total, total, total, new ChannelMode(1, total, Capacity.NONE),
                Optional.of(Rate.of(2666)), "",
                Bandwidth.NONE, false);
    }

    /** Only so that a kept plan can be asked for. */
    @Override
    public List<LookAt> lookFirst(Survey survey, Plan plan) {
        throw new UnsupportedOperationException("no test asks for it");
    }

    @Override
    public FirmwareDesk firmware() {
        throw new UnsupportedOperationException("no test asks for it");
    }

    @Override
    public ProjectDesk projects() {
        return (ProjectDesk) Proxy.newProxyInstance(FakeDesk.class.getClassLoader(), new Class<?>[] {ProjectDesk.class},
                (proxy, method, arguments) -> {
                    if (method.getName().equals("keptPlan")) {
                        return plan((Survey) arguments[0], Progress.NONE);
                    }
                    throw unused();
                });
    }

    @Override
    public CoordinatorDesk coordinator() {
        throw new UnsupportedOperationException("The window opens plain folders only.");
    }

    @Override
    public WorkDesk work() {
        return work;
    }

    @Override
    public List<RuleText> rulePages() {
        throw unused();
    }

    @Override
    public Label readLabel(String text) {
        throw unused();
    }

    @Override
    public ModuleKind moduleKind(Survey survey, String text) {
        throw unused();
    }

    @Override
    public List<Trial> tryModule(Survey survey, Machine machine, ModuleKind kind) {
        throw unused();
    }

    @Override
    public Plan planWith(String solver, Survey survey, Progress progress) {
        throw unused();
    }

    @Override
    public List<WrittenGoal> writeProgrammes(
            Survey survey, String form, Path folder, boolean force, Progress progress) {
        throw unused();
    }

    @Override
    public List<Path> export(Survey survey, Plan plan, Path folder, boolean force, Progress progress) {
        throw unused();
    }

    @Override
    public void writeFindings(Survey survey, Path file, boolean force) {
        throw unused();
    }

    @Override
    public Plan reopen(Path planFile, Survey survey) {
        throw unused();
    }

    @Override
    public Delivery arrived(Plan plan, List<Path> receipts, Optional<Path> done, Progress progress) {
        throw unused();
    }

    @Override
    public List<Path> exportWork(
            Survey survey, Delivery delivery, Path folder, boolean force, Progress progress) {
        throw unused();
    }

    @Override
    public Settlement settle(
            Survey survey, Plan plan, List<Path> receipts, Optional<Path> done, Progress progress) {
        throw unused();
    }

    @Override
    public List<Path> exportWork(
            Survey survey, Settlement settled, Path folder, boolean force, Progress progress) {
        throw unused();
    }

    @Override
    public Plan earlier(Path plan) {
        throw unused();
    }

    @Override
    public Difference compare(Plan before, Plan after) {
        throw unused();
    }

    @Override
    public void writeDifference(Difference difference, Path file, boolean force) {
        throw unused();
    }

    @Override
    public Proof prove(Path planFile, List<Path> inventories, Project project, Progress progress) {
        throw unused();
    }

    @Override
    public void writeProof(Proof proof, Path file, boolean force) {
        throw unused();
    }

    @Override
    public List<Path> writeTemplates(Path folder, boolean force) {
        throw unused();
    }

    private static UnsupportedOperationException unused() {
        return new UnsupportedOperationException("The window doesn't do this.");
    }
}
