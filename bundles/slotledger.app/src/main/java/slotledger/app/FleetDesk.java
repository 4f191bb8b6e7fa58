package slotledger.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Settlement;
import slotledger.model.difference.Difference;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Plan;
import slotledger.model.proof.Proof;
import slotledger.model.task.Progress;
import slotledger.model.trade.Wave;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Verdict;

/** The whole job, step by step. Only this door writes files, and only whole ones. */
public interface FleetDesk {

    /** The pages of all active rules, by id; needs no project. */
    List<RuleText> rulePages();

    /** Reads what is printed on a module; needs no project. */
    Label readLabel(String text);

    /** The door to projects that are kept with their whole history. */
    ProjectDesk projects();

    /** The door to rounds and jobs of such projects. */
    WorkDesk work();

    /** The door to all that a coordinator does with a plan of such a project. */
    CoordinatorDesk coordinator();

    /** The door to what machines say of themselves. */
    FirmwareDesk firmware();

    /**
     * Finds a project's files by their usual names in a folder: fleet*, offers*, shelf*, policy*, choices*,
     * mapping*, boards/. Of a project with a history, packed or not, they are taken out for this run.
     *
     * @throws DeskException where the folder is missing or holds no inventory
     */
    Project open(Path folder) throws DeskException;

    /** Reads all files of a project and looks up the boards. */
    Survey survey(Project project, Progress progress) throws DeskException;

    /** What the rules say of a machine of the survey with some population in it. */
    Verdict judge(Survey survey, Machine machine, Population population);

    /** How a machine of the survey runs as it is. */
    Operation operate(Survey survey, Machine machine);

    /** The arithmetic of modes, rate and capacities of a machine of the survey with some population in it. */
    Arithmetic workOut(Survey survey, Machine machine, Population population);

    /**
     * What a machine of the survey, as it is, lacks of its role's target, by the measure of the plan; one phrase each.
     * Empty where it meets the target or has none.
     */
    List<String> shortfalls(Survey survey, Machine machine);

    /**
     * The survey of one of the policy's waves: on its day, with its budgets, and with fleet, shelf and stock of
     * suppliers as the wave before leaves them. {@link #plan} then plans it alone.
     *
     * @param survey what the files say, for the first wave; that of the wave before for a later one
     * @param before the plan of the wave before; empty for the first
     */
    Survey wave(Survey survey, Wave wave, Optional<Plan> before);

    /**
     * Reads an earlier plan to compare with, or to plan from.
     *
     * @param plan plan.json, or the folder it is in
     */
    Plan earlier(Path plan) throws DeskException;

    /**
     * What is different between two plans.
     *
     * @throws DeskException where they count in different currencies
     */
    Difference compare(Plan before, Plan after) throws DeskException;

    /** Writes what is different between two plans as a workbook. */
    void writeDifference(Difference difference, Path file, boolean force) throws DeskException;

    /** Plans the fleet, and checks every machine of the plan with the rules again. */
    Plan plan(Survey survey, Progress progress) throws DeskException;

    /** Plans as {@link #plan} does, and answers questions about the plan afterwards without listing anything again. */
    PlanQuestions ask(Survey survey, Progress progress) throws DeskException;

    /**
     * Budget against weighted machines on target, without making a plan first: what is found for each budget, and what
     * no plan can exceed. {@link PlanQuestions#curve} makes the best plan for each budget instead, and takes longer.
     *
     * @param points about how many, at least 2
     * @param soFar  is told the curve after every point
     */
    BudgetCurve curve(Survey survey, int points, Consumer<BudgetCurve> soFar, Progress progress) throws DeskException;

    /** Writes a curve of budgets as a workbook with a chart. */
    void writeCurve(BudgetCurve curve, String title, Path file, boolean force) throws DeskException;

    /**
     * What to find out before the plan's money is spent, what most money hangs on first; machines that are alike
     * stand together.
     */
    List<LookAt> lookFirst(Survey survey, Plan plan);

    /**
     * Plans with a solver of one's own choice.
     *
     * @param solver part of its name
     * @throws DeskException also where there is no such solver, or it can't be used here; the message says why
     */
    Plan planWith(String solver, Survey survey, Progress progress) throws DeskException;

    /**
     * Writes the integer programme of the plan into a new folder, one file a goal, for a general solver.
     *
     * @param form  lp or mps
     * @param force replaces what an earlier run wrote there
     * @throws DeskException also where the form is neither
     */
    List<WrittenGoal> writeProgrammes(Survey survey, String form, Path folder, boolean force, Progress progress)
            throws DeskException;

    /**
     * Which module kind is meant: an offer's id or part number, or what stands on a label.
     *
     * @throws DeskException where the text is neither; the message says which part was not understood
     */
    ModuleKind moduleKind(Survey survey, String text) throws DeskException;

    /**
     * What the rules say of a module kind in each socket of a machine, and in all sockets at once. Where a socket alone
     * is not allowed, others of its bank or of the order of filling are filled with it.
     */
    List<Trial> tryModule(Survey survey, Machine machine, ModuleKind kind);

    /**
     * What the rules say of module kinds in every slot of a board.
     *
     * @param board id, name or alias of a board of the survey
     * @param kinds empty means every kind of the project: on offer, on the shelf, in the fleet
     * @throws DeskException where no such board is known; the message names those that are near
     */
    BoardMatrix matrix(Survey survey, String board, List<ModuleKind> kinds, Progress progress) throws DeskException;

    /** Writes the matrix as a workbook. */
    void writeMatrix(BoardMatrix matrix, Path file, boolean force) throws DeskException;

    /**
     * Writes everything that comes out of a plan into a new folder, the findings among it, whole or not at all.
     *
     * @param force replaces what an earlier run wrote there
     * @return the files, in the order a person would open them
     */
    List<Path> export(Survey survey, Plan plan, Path folder, boolean force, Progress progress)
            throws DeskException;

    /** Writes the inventories with notes on the cells that have findings. */
    void writeFindings(Survey survey, Path file, boolean force) throws DeskException;

    /** Reads back the plan in a file; the survey must know its boards, so that it can be printed again. */
    Plan reopen(Path planFile, Survey survey) throws DeskException;

    /**
     * Says what can be done with what arrived of a plan's order.
     *
     * @param receipts lists of what arrived so far
     * @param done     a text file with the asset tag of a finished machine on each line; empty where none is
     */
    Delivery arrived(Plan plan, List<Path> receipts, Optional<Path> done, Progress progress) throws DeskException;

    /**
     * Ends a plan of whose order nothing more will come: what is to be done with what is there.
     *
     * @param receipts lists of all that arrived
     * @param done     a text file with the asset tag of a finished machine on each line; empty where none is
     */
    Settlement settle(Survey survey, Plan plan, List<Path> receipts, Optional<Path> done, Progress progress)
            throws DeskException;

    /**
     * Writes what a technician needs for the machines that can be done now: all files of a plan but the order, and the
     * workbook of what arrived and for which machine it is.
     */
    List<Path> exportWork(Survey survey, Delivery delivery, Path folder, boolean force, Progress progress)
            throws DeskException;

    /** Writes the same for a plan that has ended, with what has changed against the plan as it was. */
    List<Path> exportWork(Survey survey, Settlement settled, Path folder, boolean force, Progress progress)
            throws DeskException;

    /**
     * Compares an inventory taken after the work with a plan.
     *
     * @param planFile    plan.json of an earlier run
     * @param inventories taken after the work
     * @param project     for mapping and boards
     */
    Proof prove(Path planFile, List<Path> inventories, Project project, Progress progress) throws DeskException;

    /** Writes the proof workbook. */
    void writeProof(Proof proof, Path file, boolean force) throws DeskException;

    /** Writes the fill-in files with explanations in them; refuses to replace any. */
    List<Path> writeTemplates(Path folder, boolean force) throws DeskException;
}
