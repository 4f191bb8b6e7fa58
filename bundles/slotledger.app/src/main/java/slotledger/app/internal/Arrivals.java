package slotledger.app.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.intake.Intake;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Receipt;
import slotledger.model.delivery.Settlement;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.planner.DeliveryPlanner;
import slotledger.planner.PlannerException;

/** Reads what arrived and what is done, and asks what can be done with it. */
final class Arrivals {

    private final Intake intake;
    private final DeliveryPlanner planner;

    Arrivals(Intake intake, DeliveryPlanner planner) {
        this.intake = intake;
        this.planner = planner;
    }

    /** How the planner is asked. */
    @FunctionalInterface
    private interface Question<T> {
        T ask(List<Receipt> receipts, Set<AssetTag> done) throws PlannerException;
    }

    private record Answer<T>(T value, List<Finding> findings) {
    }

    Delivery arrived(Plan plan, List<Path> receipts, Optional<Path> done, Progress progress) throws DeskException {
        Answer<Delivery> found = ask(plan, receipts, done, progress,
                (lists, finished) -> planner.arrived(plan, lists, finished, progress));
        return with(found.findings(), found.value());
    }

    Settlement settle(Plan plan, List<Path> receipts, Optional<Path> done, Map<BoardId, Board> boards, Market market,
            Progress progress) throws DeskException {
        Answer<Settlement> found = ask(plan, receipts, done, progress,
                (lists, finished) -> planner.settle(plan, lists, finished, boards, market, progress));
        Settlement settled = found.value();
        return new Settlement(with(found.findings(), settled.delivery()), settled.before(), settled.plan());
    }

    Delivery arrived(Plan plan, List<Receipt> receipts, Set<AssetTag> done, Progress progress) throws DeskException {
        try {
            return planner.arrived(plan, receipts, done, progress);
        } catch (PlannerException problem) {
            throw new DeskException(Trouble.PLAN, problem.getMessage(), problem);
        }
    }

    Settlement settle(Plan plan, List<Receipt> receipts, Set<AssetTag> done, Map<BoardId, Board> boards, Market market,
            Progress progress) throws DeskException {
        try {
            return planner.settle(plan, receipts, done, boards, market, progress);
        } catch (PlannerException problem) {
            throw new DeskException(Trouble.PLAN, problem.getMessage(), problem);
        }
    }

    private static Delivery with(List<Finding> ofReading, Delivery found) {
        List<Finding> findings = new ArrayList<>(ofReading);
        findings.addAll(found.findings());
        return new Delivery(found.lines(), found.done(), found.now(), found.waiting(), findings);
    }

    private <T> Answer<T> ask(Plan plan, List<Path> receipts, Optional<Path> done, Progress progress,
            Question<T> question) throws DeskException {
        try {
            Reading<List<Receipt>> reading = intake.readReceipts(receipts, progress);
            Set<AssetTag> finished = done.isPresent() ? done(plan, done.get()) : Set.of();
            return new Answer<>(question.ask(reading.value(), finished), reading.findings());
        } catch (IntakeException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        } catch (PlannerException problem) {
            throw new DeskException(Trouble.PLAN, problem.getMessage(), problem);
        }
    }

    private static Set<AssetTag> done(Plan plan, Path file) throws DeskException {
        Set<AssetTag> known = plan.work().stream().map(work -> work.machine().tag()).collect(Collectors.toSet());
        Set<AssetTag> done = new LinkedHashSet<>();
        try {
            List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
            for (int line = 0; line < lines.size(); line++) {
                String text = lines.get(line).replace("\uFEFF", "").strip();
                if (text.isEmpty()) {
                    continue;
                }
                if (!known.contains(new AssetTag(text))) {
                    throw new DeskException(Trouble.INPUT, "%s, line %d: \"%s\" is no machine that the plan opens."
                            .formatted(file, line + 1, text) + " Write one asset tag a line, as the plan writes it.");
                }
                done.add(new AssetTag(text));
            }
        } catch (IOException problem) {
            throw new DeskException(Trouble.INPUT, "The list of finished machines " + file
                    + " can't be read. Name a text file with one asset tag a line.", problem);
        }
        return done;
    }
}
