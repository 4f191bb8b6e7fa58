package slotledger.app.internal;


import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import slotledger.app.CoordinatorDesk;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
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
import slotledger.catalog.BoardDrafter;
import slotledger.catalog.BoardFormat;
import slotledger.catalog.CatalogReader;
import slotledger.catalog.FleetResolver;
import slotledger.export.PlanFiles;
import slotledger.export.spi.PlanExporter;
import slotledger.intake.Intake;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Settlement;
import slotledger.model.difference.Difference;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Plan;
import slotledger.model.proof.Proof;
import slotledger.model.task.Progress;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Wave;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Verdict;
import slotledger.planner.Advice;
import slotledger.planner.DeliveryPlanner;
import slotledger.planner.FleetPlanner;
import slotledger.planner.PlanAdvisor;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.store.ProjectStores;

/** Orders the steps of the other bundles. */
@Component
public final class DefaultFleetDesk implements FleetDesk {

    private static final String ARRIVALS = "arrivals.xlsx";

    private final Intake intake;
    private final Surveyor surveyor;
    private final MemoryRules rules;
    private final FleetPlanner planner;
    private final PlanAdvisor advisor;
    private final Arrivals arrivals;
    private final PlanFiles files;
    private final DefaultProjectDesk projects;
    private final WorkSessions sessions;
    private final WorkDesk work;
    private final CoordinatorDesk coordinator;
    private final SingleFiles single;
    private final PlanFolder folders;
    private final FirmwareDesk firmware;

    @Activate
    public DefaultFleetDesk(
            @Reference Intake intake,
            @Reference CatalogReader catalogs,
            @Reference FleetResolver resolver,
            @Reference BoardDrafter drafter,
            @Reference MemoryRules rules,
            @Reference FleetPlanner planner,
            @Reference PlanAdvisor advisor,
            @Reference DeliveryPlanner deliveries,
            @Reference PlanFiles files,
            @Reference ProjectStores stores,
            @Reference(policyOption = ReferencePolicyOption.GREEDY) List<PlanExporter> exporters) {
        this.intake = intake;
        this.surveyor = new Surveyor(intake, catalogs, resolver, rules);
        this.rules = rules;
        this.planner = planner;
        this.advisor = advisor;
        this.arrivals = new Arrivals(intake, deliveries);
        this.files = files;
        this.single = new SingleFiles(files);
        this.projects = new DefaultProjectDesk(stores, intake, single);
        this.sessions = new WorkSessions(stores, files);
        this.work = new DefaultWorkDesk(sessions);
        this.coordinator = new DefaultCoordinatorDesk(sessions, work, arrivals, surveyor, rules, files);
        this.folders = new PlanFolder(intake, exporters);
        this.firmware = new DefaultFirmwareDesk(intake, catalogs, drafter);
    }

    @Override
    public List<RuleText> rulePages() {
        return rules.pages().stream().map(page -> new RuleText(page.id(), page.sentence(), page.source(),
                page.howToTell(), page.whatToDo(), page.example())).toList();
    }

    @Override
    public Label readLabel(String text) {
        return Labels.of(intake.readLabel(text), rules);
    }

    @Override
    public FirmwareDesk firmware() {
        return firmware;
    }

    @Override
    public Project open(Path folder) throws DeskException {
        return projects.isProject(folder)
                ? projects.takeOut(folder, LocalDate.now()) : ProjectFiles.in(folder, LocalDate.now());
    }

    @Override
    public ProjectDesk projects() {
        return projects;
    }

    @Override
    public WorkDesk work() {
        return work;
    }

    @Override
    public CoordinatorDesk coordinator() {
        return coordinator;
    }

    /** Lets go of projects that are still open. */
    @Deactivate
    public void close() {
        sessions.close();
    }

    @Override
    public Survey survey(Project project, Progress progress) throws DeskException {
        return surveyor.survey(project, progress);
    }

    @Override
    public Verdict judge(Survey survey, Machine machine, Population population) {
        return rules.judge(Setup.of(survey.fleet(), machine).with(population));
    }

    @Override
    public Operation operate(Survey survey, Machine machine) {
        return rules.operate(Setup.of(survey.fleet(), machine));
    }

    @Override
    public Arithmetic workOut(Survey survey, Machine machine, Population population) {
        return rules.workOut(Setup.of(survey.fleet(), machine).with(population));
    }

    @Override
    public List<String> shortfalls(Survey survey, Machine machine) {
        return surveyor.shortfalls(survey, machine);
    }

    @Override
    public Survey wave(Survey survey, Wave wave, Optional<Plan> before) {
        return Waves.survey(survey, wave, before);
    }

    @Override
    public Plan plan(Survey survey, Progress progress) throws DeskException {
        return plan(survey, Optional.empty(), progress);
    }

    @Override
    public Plan planWith(String solver, Survey survey, Progress progress) throws DeskException {
        return plan(survey, Optional.of(solver), progress);
    }

    @Override
    public List<LookAt> lookFirst(Survey survey, Plan plan) {
        return new LookFirst(rules, survey, plan).list();
    }

    @Override
    public List<WrittenGoal> writeProgrammes(
            Survey survey, String form, Path folder, boolean force, Progress progress) throws DeskException {
        try {
            return ProgrammeFiles.write(planner, PlanRequests.of(survey), form, folder, force, progress);
        } catch (PlannerException problem) {
            throw new DeskException(Trouble.PLAN, problem.getMessage(), problem);
        }
    }

    private Plan plan(Survey survey, Optional<String> solver, Progress progress) throws DeskException {
        PlanRequest request = PlanRequests.of(survey).with(solver);
        try {
            Plan plan = planner.plan(request, progress);
            new PlanCheck(rules).check(plan, survey.fleet());
            return plan;
        } catch (PlannerException problem) {
            throw new DeskException(Trouble.PLAN, problem.getMessage(), problem);
        }
    }

    @Override
    public PlanQuestions ask(Survey survey, Progress progress) throws DeskException {
        PlanRequest request = PlanRequests.of(survey);
        try {
            Advice advice = advisor.advise(request, progress);
            new PlanCheck(rules).check(advice.plan(), survey.fleet());
            return new AdvisedQuestions(advice);
        } catch (PlannerException problem) {
            throw new DeskException(Trouble.PLAN, problem.getMessage(), problem);
        }
    }

    @Override
    public BudgetCurve curve(Survey survey, int points, Consumer<BudgetCurve> soFar, Progress progress)
            throws DeskException {
        try {
            return advisor.curve(PlanRequests.of(survey), points, soFar, progress);
        } catch (PlannerException problem) {
            throw new DeskException(Trouble.PLAN, problem.getMessage(), problem);
        }
    }

    @Override
    public void writeCurve(BudgetCurve curve, String title, Path file, boolean force) throws DeskException {
        single.write(file, force, made -> files.writeCurve(curve, title, made));
    }

    @Override
    public Plan earlier(Path plan) throws DeskException {
        return single.plan(plan);
    }

    @Override
    public Difference compare(Plan before, Plan after) throws DeskException {
        if (!Difference.isComparable(before, after)) {
            throw new DeskException(Trouble.INPUT, "The plans can't be compared: one counts in %s, the other in %s."
                    .formatted(before.policy().currency(), after.policy().currency()));
        }
        return Difference.of(before, after);
    }

    @Override
    public void writeDifference(Difference difference, Path file, boolean force) throws DeskException {
        single.write(file, force, made -> files.writeDifference(difference, made));
    }

    @Override
    public ModuleKind moduleKind(Survey survey, String text) throws DeskException {
        Optional<Offer> offer = survey.market().offers().stream()
                .filter(each -> each.id().equalsIgnoreCase(text) || each.part().equalsIgnoreCase(text))
                .findFirst();
        if (offer.isPresent()) {
            if (offer.get().piece() instanceof ModuleKind kind) {
                return kind;
            }
            throw new DeskException(Trouble.INPUT, "The offer " + offer.get().id() + " is no memory module but a "
                    + offer.get().piece() + "; where one is wanted the rules of the board say so.");
        }
        Reading<Optional<ModuleKind>> reading = intake.readModule(text);
        return reading.value().orElseThrow(() -> new DeskException(Trouble.INPUT, "No module is meant by \"" + text
                + "\": it is no offer's id or part number, and can't be read as a label such as "
                + "\"8 GB DDR4-2666 SO-DIMM 1Rx8\"."));
    }

    @Override
    public List<Trial> tryModule(Survey survey, Machine machine, ModuleKind kind) {
        return new Trials(rules, survey.fleet(), machine, kind).all();
    }

    @Override
    public BoardMatrix matrix(Survey survey, String board, List<ModuleKind> kinds, Progress progress)
            throws DeskException {
        Board found = BoardSearch.find(survey.boards(), board);
        return new MatrixMaker(rules, found).make(
                kinds.isEmpty() ? ProjectKinds.of(survey) : ProjectKinds.asked(survey, kinds), progress);
    }

    @Override
    public void writeMatrix(BoardMatrix matrix, Path file, boolean force) throws DeskException {
        single.write(file, force, made -> files.writeMatrix(matrix, made));
    }

    @Override
    public List<Path> export(Survey survey, Plan plan, Path folder, boolean force, Progress progress)
            throws DeskException {
        return folders.writeAll(survey, plan, folder, force, progress);
    }

    @Override
    public Delivery arrived(Plan plan, List<Path> receipts, Optional<Path> done, Progress progress)
            throws DeskException {
        return arrivals.arrived(plan, receipts, done, progress);
    }

    @Override
    public Settlement settle(Survey survey, Plan plan, List<Path> receipts, Optional<Path> done, Progress progress)
            throws DeskException {
        Settlement settled = arrivals.settle(plan, receipts, done, boards(survey), survey.market(), progress);
        new PlanCheck(rules).check(settled.plan(), survey.fleet());
        return settled;
    }

    @Override
    public List<Path> exportWork(Survey survey, Delivery delivery, Path folder, boolean force, Progress progress)
            throws DeskException {
        return folders.writeWork(survey, delivery.now(), new PlanFolder.Extra(ARRIVALS,
                file -> files.writeArrivals(delivery, file)), folder, force, progress);
    }

    @Override
    public List<Path> exportWork(Survey survey, Settlement settled, Path folder, boolean force, Progress progress)
            throws DeskException {
        return folders.writeWork(survey, settled.plan(), new PlanFolder.Extra(ARRIVALS,
                file -> files.writeArrivals(settled, file)), folder, force, progress);
    }

    @Override
    public void writeFindings(Survey survey, Path file, boolean force) throws DeskException {
        single.write(file, force, made ->
                intake.writeFindings(survey.project().inventories(), survey.findings(), made));
    }

    @Override
    public Plan reopen(Path planFile, Survey survey) throws DeskException {
        Plan plan = single.plan(planFile);
        SingleFiles.mustKnowBoards(plan, planFile, survey);
        return plan;
    }

    private static Map<BoardId, Board> boards(Survey survey) {
        return survey.boards().stream().collect(Collectors.toMap(Board::id, Function.identity()));
    }

    @Override
    public Proof prove(Path planFile, List<Path> inventories, Project project, Progress progress)
            throws DeskException {
        Plan plan = single.plan(planFile);
        List<Finding> findings = new ArrayList<>();
        Surveyor.Inventory after = surveyor.inventory(inventories, project, findings, progress);
        return new ProofMaker(rules)
                .prove(plan, after.fleet(), after.namingFillers(), findings, project.date());
    }

    @Override
    public void writeProof(Proof proof, Path file, boolean force) throws DeskException {
        single.write(file, force, made -> files.writeProof(proof, made));
    }

    @Override
    public List<Path> writeTemplates(Path folder, boolean force) throws DeskException {
        try (OutputFolder output = OutputFolder.prepare(folder, force)) {
            List<Path> made = new ArrayList<>(intake.writeTemplates(output.work()));
            Path boards = Files.createDirectory(output.work().resolve("boards"));
            made.add(Files.writeString(boards.resolve("example-board.yaml"), BoardFormat.template()));
            made.add(Files.writeString(boards.resolve("board.schema.json"), BoardFormat.schema()));
            return output.publish(made);
        } catch (IntakeException | IOException problem) {
            throw new DeskException(Trouble.OUTPUT, problem.getMessage(), problem);
        }
    }
}
