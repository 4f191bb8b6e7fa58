package slotledger.cli.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import slotledger.app.CoordinatorDesk;
import slotledger.app.DeskException;
import slotledger.app.FirmwareDesk;
import slotledger.app.FleetDesk;
import slotledger.app.Label;
import slotledger.app.LookAt;
import slotledger.app.Mixup;
import slotledger.app.PlanQuestions;
import slotledger.app.Project;
import slotledger.app.ProjectDesk;
import slotledger.app.RuleText;
import slotledger.app.Survey;
import slotledger.app.Trial;
import slotledger.app.WorkDesk;
import slotledger.app.WrittenGoal;
import slotledger.model.board.BoardId;
import slotledger.model.board.Redundancy;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Settlement;
import slotledger.model.difference.Difference;
import slotledger.model.family.Families;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.machine.Whereabouts;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.observed.LabelPart;
import slotledger.model.observed.LabelReading;
import slotledger.model.observed.ModuleFact;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Spending;
import slotledger.model.plan.Station;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.Proof;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.source.Source;
import slotledger.model.task.Progress;
import slotledger.model.trade.Buying;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;
import slotledger.model.trade.Wave;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Verdict;

/** A desk without files: remembers what it was asked and gives small fixed answers. */
final class FakeDesk implements FleetDesk {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);
    private static final Money NOTHING = Money.zero(Currency.getInstance("EUR"));

    private final List<String> calls = new ArrayList<>();
    private int firmwareBytes = Integer.MAX_VALUE;
    private final List<Finding> findings = new ArrayList<>();
    private final List<MachineProof> proofs = new ArrayList<>();
    private final List<Wave> waves = new ArrayList<>();
    private Exception failure;

    void cutFirmwareAt(int bytes) {
        firmwareBytes = bytes;
    }

    List<String> calls() {
        return List.copyOf(calls);
    }

    void withError() {
        findings.add(new Finding(Severity.ERROR, "bad-size", Place.ofRow("fleet.xlsx", "PCs", 7), Optional.empty(),
                "8 Gb?", "The size can't be read.", "a size such as 8 GB", "Correct it."));
    }

    void withIncompleteProof() {
        proofs.add(new MachineProof(opened(), ProofOutcome.NOT_DONE, List.of(), "As before."));
    }

    void withWaves(String... names) {
        for (String name : names) {
            waves.add(new Wave(name, DAY.plusYears(waves.size()), Optional.empty(), Map.of(), Optional.empty()));
        }
    }

    private Policy policy() {
        return new Policy(NOTHING.currency(), List.of(), Optional.empty(), Map.of(), NOTHING, NOTHING, 0, false, true,
                false, Policy.LeaveAlone.NONE, Buying.PLAIN, waves);
    }

    void failWith(Exception problem) {
        failure = problem;
    }

    @Override
    public Project open(Path folder) throws DeskException {
        if (failure instanceof DeskException known) {
            throw known;
        }
        if (failure instanceof RuntimeException fault) {
            throw fault;
        }
        calls.add("open " + folder);
        return new Project("school", List.of(Path.of("fleet.xlsx")), Optional.empty(), List.of(), List.of(), List.of(),
                Optional.empty(), DAY);
    }

    @Override
    public List<LookAt> lookFirst(Survey survey, Plan plan) {
        return List.of(new LookAt(LookAt.How.OPEN, "Kestrin KB-510", List.of(new AssetTag("K-1"), new AssetTag("K-2")),
                List.of(new LookAt.Question("the ranks of a module in DIMM1", "Read the label.")),
                new Money(6000, NOTHING.currency()), List.of("Tallow/T-8")));
    }

    @Override
    public FirmwareDesk firmware() {
        return new FakeFirmware(calls, firmwareBytes);
    }

    @Override
    public ProjectDesk projects() {
        return new FakeProjects(calls);
    }

    @Override
    public CoordinatorDesk coordinator() {
        return new FakeCoordinator(calls);
    }

    @Override
    public WorkDesk work() {
        return new FakeWork(calls);
    }

    @Override
    public List<RuleText> rulePages() {
        return List.of(
                new RuleText("notch", "A module goes in only past its own notch.", Source.of(Ground.PRACTICE),
                        "Look at the notch.", "Choose another.", "A notch at 48 does not pass one at 64."),
                new RuleText("pairs", "Two are better than one.", Source.document("Manual", "page 3"), "Count them.",
                        "Add one.", "1 becomes 2."));
    }

    @Override
    public Label readLabel(String text) {
        if (text.equals("nonsense")) {
            return new Label(new LabelReading(text, Optional.empty(), Optional.empty(), Optional.empty(),
                    Optional.empty(), List.of(), Map.of(), text, List.of()), List.of(), List.of(), List.of());
        }
        boolean told = text.startsWith("8GB");
        Optional<Piece> piece = told ? Optional.of(ModuleKind.ofCapacity(Capacity.ofGiB(8))) : Optional.empty();
        LabelReading reading = new LabelReading(text, piece, Optional.of(Generation.DDR4), Optional.empty(),
                Optional.empty(), List.of(new LabelPart(1, text, "generation DDR4")),
                Map.of(ModuleFact.GENERATION, "DDR4"), "", List.of());
        Mixup mixup = new Mixup("a DDR4 DIMM", "a DDR5 DIMM", Optional.of("does not go in. The notch is elsewhere."),
                "Look at the notch.", "PC4 against PC5.", Source.of(Ground.MEMORY));
        return new Label(reading, Families.find("ddr4-dimm"), List.of(MissingFact.RANKS), List.of(mixup));
    }

    @Override
    public Survey survey(Project project, Progress progress) {
        calls.add("survey " + project.date());
        progress.step("Reading", 0.5);
        return new Survey(project, List.of(), 1, List.of(), new Fleet(List.of(), Map.of()), List.of(), Market.NONE,
                Shelf.EMPTY, waves.isEmpty() ? Optional.empty() : Optional.of(policy()), findings);
    }

    @Override
    public Verdict judge(Survey survey, Machine machine, Population population) {
        throw new AssertionError("not asked here");
    }

    @Override
    public Operation operate(Survey survey, Machine machine) {
        throw new AssertionError("not asked here");
    }

    @Override
    public Arithmetic workOut(Survey survey, Machine machine, Population population) {
        throw new AssertionError("not asked here");
    }

    @Override
    public List<String> shortfalls(Survey survey, Machine machine) {
        throw new AssertionError("not asked here");
    }

    @Override
    public ModuleKind moduleKind(Survey survey, String text) {
        calls.add("module " + text);
        return ModuleKind.ofCapacity(Capacity.ofGiB(8));
    }

    @Override
    public List<Trial> tryModule(Survey survey, Machine machine, ModuleKind kind) {
        throw new AssertionError("not asked here");
    }

    @Override
    public BoardMatrix matrix(Survey survey, String board, List<ModuleKind> kinds, Progress progress) {
        calls.add("matrix " + board + " " + kinds.size());
        return SmallMatrix.of("S1", "S2");
    }

    @Override
    public void writeMatrix(BoardMatrix matrix, Path file, boolean force) {
        calls.add("matrix to " + file + " " + force);
    }

    @Override
    public Survey wave(Survey survey, Wave wave, Optional<Plan> before) {
        return survey;
    }

    @Override
    public Plan plan(Survey survey, Progress progress) {
        calls.add("plan");
        Policy policy = new Policy(NOTHING.currency(), List.of(), Optional.empty(), Map.of(), NOTHING, NOTHING, 0,
                false, true, false, Policy.LeaveAlone.NONE);
        return new Plan("school", DAY, policy, List.of(), List.of(), List.of(),
                new Spending(NOTHING, Map.of(), NOTHING, Map.of()),
                new Optimality(0, 0, NOTHING, NOTHING, "none", List.of(), false), List.of());
    }

    @Override
    public PlanQuestions ask(Survey survey, Progress progress) {
        calls.add("ask " + survey.policy().flatMap(Policy::budget).map(Money::toString).orElse("no budget"));
        return new FakeQuestions(plan(survey, progress));
    }

    @Override
    public BudgetCurve curve(Survey survey, int points, Consumer<BudgetCurve> soFar, Progress progress) {
        calls.add("curve of " + points);
        return new FakeQuestions(plan(survey, progress)).curve(points, soFar, progress);
    }

    @Override
    public void writeCurve(BudgetCurve curve, String title, Path file, boolean force) {
        calls.add("curve to " + file + " " + force);
    }

    @Override
    public Plan planWith(String solver, Survey survey, Progress progress) {
        calls.add("solver " + solver);
        return plan(survey, progress);
    }

    @Override
    public List<WrittenGoal> writeProgrammes(
            Survey survey, String form, Path folder, boolean force, Progress progress) {
        calls.add("programmes " + form + " " + folder + " " + force);
        return List.of(new WrittenGoal(folder.resolve("goal-1." + form), "first things", 3, 2),
                new WrittenGoal(folder.resolve("goal-2." + form), "money", 7, 7));
    }

    @Override
    public List<Path> export(Survey survey, Plan plan, Path folder, boolean force, Progress progress) {
        calls.add("export " + folder + " " + force);
        return List.of(folder.resolve("order.xlsx"));
    }

    @Override
    public void writeFindings(Survey survey, Path file, boolean force) {
        calls.add("findings " + file);
    }

    @Override
    public Plan reopen(Path planFile, Survey survey) {
        return plan(survey, Progress.NONE);
    }

    @Override
    public Delivery arrived(Plan plan, List<Path> receipts, Optional<Path> done, Progress progress) {
        calls.add("arrived " + receipts + " " + done);
        Plan known = plan(null, Progress.NONE);
        return new Delivery(List.of(), List.of(), known, List.of(), findings);
    }

    @Override
    public List<Path> exportWork(
            Survey survey, Delivery delivery, Path folder, boolean force, Progress progress) {
        calls.add("exportWork " + folder);
        return List.of(folder.resolve("rounds.pdf"));
    }

    @Override
    public Settlement settle(
            Survey survey, Plan plan, List<Path> receipts, Optional<Path> done, Progress progress) {
        calls.add("settle " + receipts + " " + done);
        Plan known = plan(null, Progress.NONE);
        return new Settlement(new Delivery(List.of(), List.of(), known, List.of(), findings), known, known);
    }

    @Override
    public List<Path> exportWork(
            Survey survey, Settlement settled, Path folder, boolean force, Progress progress) {
        calls.add("exportWork settled " + folder);
        return List.of(folder.resolve("rounds.pdf"));
    }

    @Override
    public Plan earlier(Path plan) {
        calls.add("earlier " + plan);
        return plan(null, Progress.NONE);
    }

    @Override
    public Difference compare(Plan before, Plan after) {
        calls.add("compare");
        return Difference.of(before, after);
    }

    @Override
    public void writeDifference(Difference difference, Path file, boolean force) {
        calls.add("difference to " + file + " " + force);
    }

    @Override
    public Proof prove(Path planFile, List<Path> inventories, Project project, Progress progress) {
        return new Proof("school", DAY, proofs, List.of());
    }

    @Override
    public void writeProof(Proof proof, Path file, boolean force) {
        calls.add("proof " + file);
    }

    @Override
    public List<Path> writeTemplates(Path folder, boolean force) {
        return List.of(folder.resolve("fleet-template.xlsx"));
    }

    private static MachinePlan opened() {
        SlotContent module = SlotContent.of(ModuleKind.ofCapacity(Capacity.ofGiB(8)));
        Machine machine = new Machine(new AssetTag("A1"), "", new Whereabouts("", ""), "", "lab", new BoardId("b"), 1,
                Optional.empty(), Optional.empty(), Redundancy.NONE, new Population(Map.of("S1", SlotContent.EMPTY)),
                Place.NOWHERE);
        Operation none = new Operation(Capacity.NONE, Capacity.NONE, Capacity.NONE, new ChannelMode(0, Capacity.NONE,
                Capacity.NONE),
                Optional.empty(), "", Bandwidth.NONE, false);
        Move move = new Move(module, new Station.OnShelf(), new Station.InSlot(machine.tag(), "S1"));
        return new MachinePlan(machine, Optional.empty(), new Population(Map.of("S1", module)), Outcome.REACHES_TARGET,
                List.of(move), none, none, Optional.empty(), NOTHING, 1);
    }
}
