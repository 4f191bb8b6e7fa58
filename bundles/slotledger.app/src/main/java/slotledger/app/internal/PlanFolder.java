package slotledger.app.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Survey;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.spi.PlanExporter;
import slotledger.intake.Intake;
import slotledger.intake.IntakeException;
import slotledger.model.board.Board;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;

/** Writes everything that comes out of a plan into one folder. */
final class PlanFolder {

    private static final String ORDER = "order-workbook";

    /** A file that is written beside those of the plan. */
    record Extra(String name, SingleFiles.Writing writing) {
    }

    private final Intake intake;
    private final List<PlanExporter> exporters;

    PlanFolder(Intake intake, List<PlanExporter> exporters) {
        this.intake = intake;
        this.exporters = exporters.stream()
                .sorted(Comparator.comparingInt(PlanExporter::rank).thenComparing(PlanExporter::name))
                .toList();
    }

    List<Path> writeAll(Survey survey, Plan plan, Path folder, boolean force, Progress progress)
            throws DeskException {
        return write(survey, plan, folder, force, exporters, Optional.empty(), progress);
    }

    /** What a technician needs: everything but the order, behind a file of its own. */
    List<Path> writeWork(Survey survey, Plan plan, Extra first, Path folder, boolean force, Progress progress)
            throws DeskException {
        List<PlanExporter> work =
                exporters.stream().filter(exporter -> !exporter.name().equals(ORDER)).toList();
        return write(survey, plan, folder, force, work, Optional.of(first), progress);
    }

    static PlanBook book(Survey survey, Plan plan) {
        return new PlanBook(plan,
                survey.boards().stream().collect(Collectors.toMap(Board::id, Function.identity())),
                survey.market().in(plan.policy()), survey.unresolved(), survey.findings(), survey.before());
    }

    private List<Path> write(Survey survey, Plan plan, Path folder, boolean force, List<PlanExporter> chosen,
            Optional<Extra> first, Progress progress) throws DeskException {
        PlanBook book = book(survey, plan);
        try (OutputFolder output = OutputFolder.prepare(folder, force)) {
            List<Path> made = new ArrayList<>();
            if (first.isPresent()) {
                made.add(output.work().resolve(first.get().name()));
                first.get().writing().write(made.get(0));
            }
            for (PlanExporter exporter : chosen) {
                progress.check();
                progress.step("Writing " + exporter.name(), -1);
                made.addAll(exporter.write(book, output.work(), progress));
            }
            progress.step("Writing findings", -1);
            Path findings = output.work().resolve("findings.xlsx");
            intake.writeFindings(survey.project().inventories(), survey.findings(), findings);
            made.add(findings);
            return output.publish(made);
        } catch (ExportException | IntakeException problem) {
            throw new DeskException(Trouble.OUTPUT, problem.getMessage(), problem);
        }
    }
}
