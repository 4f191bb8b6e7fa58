package slotledger.app.internal;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import slotledger.app.CoordinatorDesk;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Project;
import slotledger.app.RoundWish;
import slotledger.app.Survey;
import slotledger.app.WorkDesk;
import slotledger.export.ExportException;
import slotledger.export.PlanFiles;
import slotledger.firmware.FirmwareReading;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.Settlement;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.MachinePlan;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.PlanVersion;
import slotledger.model.project.ProjectState;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.ClosingProof;
import slotledger.model.task.Progress;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobState;
import slotledger.model.work.Round;
import slotledger.model.work.RoundSheet;
import slotledger.rules.MemoryRules;
import slotledger.store.StoreException;

/** Strings together the journal and what is made of a plan on its way to the proof. */
final class DefaultCoordinatorDesk implements CoordinatorDesk {

    private final WorkSessions sessions;
    private final WorkDesk work;
    private final Arrivals arrivals;
    private final Surveyor surveyor;
    private final MemoryRules rules;
    private final PlanFiles files;

    DefaultCoordinatorDesk(WorkSessions sessions, WorkDesk work, Arrivals arrivals, Surveyor surveyor,
            MemoryRules rules, PlanFiles files) {
        this.sessions = sessions;
        this.work = work;
        this.arrivals = arrivals;
        this.surveyor = surveyor;
        this.rules = rules;
        this.files = files;
    }

    @Override
    public List<RoundSheet> makeRounds(Path project, RoundWish wish, Author author) throws DeskException {
        return sessions.with(project, session -> {
            PlanVersion version = wanted(session, wish.plan());
            List<MachinePlan> work = session.plan(version).work().stream().filter(machine -> !session.running()
                    .job(version.number(), machine.machine().tag()).state().isEnded()).toList();
            if (work.isEmpty()) {
                throw new DeskException(Trouble.INPUT, "All jobs of plan " + version.number() + " have ended, or it "
                        + "opens no machine; there is nothing to make rounds of.");
            }
            List<Round> rounds = new RoundMaker(wish, version.number()).rounds(work);
            session.append(new Change.Rounds(version.number(), rounds), author);
            return RoundSheet.of(session.plan(version), rounds);
        });
    }

    @Override
    public List<RoundSheet> roundSheets(Path project) throws DeskException {
        return sessions.with(project, session -> {
            ProjectState state = session.state();
            List<Round> rounds = state.rounds();
            return rounds.isEmpty() ? List.of() : RoundSheet.of(session.plan(state.carriedOut().orElseThrow()), rounds);
        });
    }

    @Override
    public OrderStatus order(Path project, OptionalInt plan) throws DeskException {
        return sessions.with(project, session -> status(session, wanted(session, plan)));
    }

    @Override
    public OrderStatus record(Path project, TradeEvent event, Author author) throws DeskException {
        return sessions.with(project, session -> {
            PlanVersion version = session.version(event.plan());
            OrderCheck.mustFit(event, status(session, version));
            session.append(new Change.Traded(event), author);
            return status(session, version);
        });
    }

    @Override
    public Delivery allot(Path project, OptionalInt plan, Progress progress) throws DeskException {
        UnderWay told = sessions.with(project, session -> underWay(session, wanted(session, plan)));
        return arrivals.arrived(told.status().plan(), told.status().receipts(), told.done(), progress);
    }

    @Override
    public Settlement settle(Path project, OptionalInt plan, Survey survey, Progress progress) throws DeskException {
        UnderWay told = sessions.with(project, session -> underWay(session, wanted(session, plan)));
        return arrivals.settle(told.status().plan(), told.status().receipts(), told.done(), survey.fleet().boards(),
                survey.market(), progress);
    }

    @Override
    public ClosingProof prove(Path project, List<Path> inventories, List<Path> firmware, Project files, Author author,
            Progress progress) throws DeskException {
        List<FirmwareReading> readings = firmware.isEmpty() ? List.of() : Firmware.read(firmware);
        ProofRun run = new ProofRun(surveyor, rules, inventories, readings, files);
        UnderWay underWay = sessions.with(project, session -> underWay(session, session.carriedOut()));
        Map<AssetTag, Job> jobs = new LinkedHashMap<>();
        underWay.jobs().forEach(job -> jobs.put(job.machine(), job));
        // reading inventories takes a while, in which technicians go on
        ClosingProof closing = run.prove(underWay.status().plan(), jobs, progress);
        List<JobEvent> ended = closing.closed().stream().map(tag -> new JobEvent(UUID.randomUUID(), tag,
                underWay.status().number(), Instant.now(), new JobEvent.What.Became(JobState.DONE,
                        "proved by the inventory of " + closing.proof().date()))).toList();
        if (!ended.isEmpty()) {
            work.record(project, ended, author);
        }
        return closing;
    }

    @Override
    public CloseOut closeOut(Path project, Optional<ClosingProof> closing, LocalDate date) throws DeskException {
        return sessions.with(project, session -> {
            UnderWay underWay = underWay(session, session.carriedOut());
            return new CloseOut(date, underWay.status(), underWay.jobs(), closing);
        });
    }

    @Override
    public List<Path> writeCloseOut(CloseOut close, Path folder, boolean force) throws DeskException {
        try (OutputFolder output = OutputFolder.prepare(folder, force)) {
            Path report = output.work().resolve("close-out.pdf");
            Path workbook = output.work().resolve("close-out.xlsx");
            Path assets = output.work().resolve("assets.csv");
            files.writeCloseReport(close, report);
            files.writeCloseBook(close, workbook);
            files.writeAssets(close, assets);
            return output.publish(List.of(report, workbook, assets));
        } catch (ExportException problem) {
            throw new DeskException(Trouble.OUTPUT, problem.getMessage(), problem);
        }
    }

    /** A plan while it is carried out. */
    private record UnderWay(OrderStatus status, List<Job> jobs) {

        Set<AssetTag> done() {
            return jobs.stream().filter(job -> job.state() == JobState.DONE || job.state() == JobState.DONE_DIFFERENTLY)
                    .map(Job::machine).collect(Collectors.toCollection(LinkedHashSet::new));
        }
    }

    private static UnderWay underWay(WorkSession session, PlanVersion version) throws StoreException, DeskException {
        return new UnderWay(status(session, version), session.plan(version).work().stream()
                .map(machine -> session.running().job(version.number(), machine.machine().tag())).toList());
    }

    private static OrderStatus status(WorkSession session, PlanVersion version) throws StoreException, DeskException {
        return OrderStatus.of(version.number(), session.plan(version), session.state().trade());
    }

    private static PlanVersion wanted(WorkSession session, OptionalInt number) throws DeskException {
        return number.isPresent() ? session.version(number.getAsInt()) : session.toBeCarriedOut();
    }
}
