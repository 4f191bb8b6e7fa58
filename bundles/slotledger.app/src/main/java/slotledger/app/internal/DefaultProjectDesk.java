package slotledger.app.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Project;
import slotledger.app.ProjectDesk;
import slotledger.app.Stored;
import slotledger.app.Survey;
import slotledger.app.TeamDesk;
import slotledger.intake.Intake;
import slotledger.model.difference.ProjectDifference;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Decision;
import slotledger.model.project.Entry;
import slotledger.model.project.Fact;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.model.project.PartVersion;
import slotledger.model.project.PlanVersion;
import slotledger.model.project.ProjectListener;
import slotledger.model.project.ProjectState;
import slotledger.model.project.Watch;
import slotledger.model.task.Progress;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.ProjectStores;
import slotledger.store.StoreException;

/** Strings together store and files. */
final class DefaultProjectDesk implements ProjectDesk {

    private static final String PLAN = "plan.json";

    private final ProjectStores stores;
    private final DecisionMaker decisions;
    private final ProjectComparison comparison;
    private final SingleFiles single;

    DefaultProjectDesk(ProjectStores stores, Intake intake, SingleFiles single) {
        this.stores = stores;
        this.decisions = new DecisionMaker(intake);
        this.single = single;
        this.comparison = new ProjectComparison(stores, intake, single);
    }

    /** What is done with a project that is open. */
    @FunctionalInterface
    private interface Work<S, T> {
        T on(S store) throws StoreException, DeskException;
    }

    @Override
    public boolean isProject(Path place) {
        return stores.isProject(place);
    }

    /** Takes the files of a project out for this run, so that everything reads them as plain files. */
    Project takeOut(Path place, LocalDate date) throws DeskException {
        return read(place, source -> {
            ProjectState state = source.journal().state();
            if (!state.parts().containsKey(Part.FLEET)) {
                throw new DeskException(Trouble.INPUT, "The project " + place + " holds no inventory. Bring one in: "
                        + "slotledger project import " + place + " fleet.xlsx");
            }
            Path folder = RunFolder.make();
            StoredFiles.write(source, state, folder);
            Project plain = ProjectFiles.in(folder, date);
            return new Project(state.title(), plain.inventories(), plain.mapping(), plain.boards(), plain.offers(),
                    plain.shelves(), plain.policy(), plain.choices(), date, Optional.of(new Stored(place, state)));
        });
    }

    @Override
    public void create(Path folder, Optional<Path> from, Author author) throws DeskException {
        try {
            stores.create(folder, title(folder, from), files(from), author);
        } catch (StoreException problem) {
            throw said(problem);
        }
    }

    static String title(Path folder, Optional<Path> from) {
        return from.orElse(folder).toAbsolutePath().normalize().getFileName().toString();
    }

    static Map<Part, Map<String, Path>> files(Optional<Path> from) throws DeskException {
        return from.isPresent() ? PartFiles.in(List.of(from.get())) : Map.of();
    }

    @Override
    public Optional<Entry> bringIn(Path project, List<Path> sources, Author author) throws DeskException {
        Map<Part, Map<String, Path>> found = PartFiles.in(sources);
        return open(project, store -> {
            Map<Part, PartVersion> now = store.journal().state().parts();
            Map<Part, List<Original>> changed = new EnumMap<>(Part.class);
            for (Map.Entry<Part, Map<String, Path>> part : found.entrySet()) {
                List<Original> originals = new ArrayList<>();
                for (Map.Entry<String, Path> file : part.getValue().entrySet()) {
                    originals.add(store.keep(file.getKey(), file.getValue()));
                }
                PartVersion before = now.get(part.getKey());
                if (before == null || !before.files().equals(originals)) {
                    changed.put(part.getKey(), originals);
                }
            }
            return changed.isEmpty() ? Optional.empty()
                    : Optional.of(store.append(new Change.Imported(changed), author));
        });
    }

    @Override
    public Journal history(Path project) throws DeskException {
        return read(project, ProjectSource::journal);
    }

    @Override
    public Entry undo(Path project, OptionalLong entry, Author author) throws DeskException {
        return open(project, store -> {
            OptionalLong which = entry.isPresent() ? entry : store.journal().undoable();
            return store.append(new Change.TakenBack(which.orElseThrow(() -> new DeskException(Trouble.INPUT,
                    "There is nothing to take back in the project " + project + "."))), author);
        });
    }

    @Override
    public Entry redo(Path project, OptionalLong entry, Author author) throws DeskException {
        return open(project, store -> {
            OptionalLong which = entry.isPresent() ? entry : store.journal().redoable();
            return store.append(new Change.Restored(which.orElseThrow(() -> new DeskException(Trouble.INPUT,
                    "Nothing was taken back last in the project " + project + ". To restore an entry that was taken "
                            + "back earlier, name its number; \"project history\" shows it."))), author);
        });
    }

    @Override
    public void pack(Path project, Path file, boolean force) throws DeskException {
        if (!file.getFileName().toString().endsWith(ProjectStores.PACKED)) {
            throw new DeskException(Trouble.INPUT, "The name of a packed project must end in " + ProjectStores.PACKED
                    + ", so that it is known for one; " + file + " does not.");
        }
        try {
            stores.pack(project, file, force);
        } catch (StoreException problem) {
            throw said(problem);
        }
    }

    @Override
    public void unpack(Path file, Path folder) throws DeskException {
        try {
            stores.unpack(file, folder);
        } catch (StoreException problem) {
            throw said(problem);
        }
    }

    @Override
    public List<Path> writeFiles(Path project, OptionalLong entry, Path folder, boolean force) throws DeskException {
        return read(project, source -> {
            Journal journal = source.journal();
            if (entry.isPresent()) {
                StoredFiles.mustHave(journal, entry.getAsLong(), project);
            }
            ProjectState state = (entry.isPresent() ? journal.upTo(entry.getAsLong()) : journal).state();
            try (OutputFolder output = OutputFolder.prepare(folder, force)) {
                return output.publish(StoredFiles.write(source, state, output.work()));
            }
        });
    }

    @Override
    public void writePlan(Path project, int number, Path file, boolean force) throws DeskException {
        read(project, source -> {
            PlanVersion plan = StoredFiles.version(source.journal().state(), number, project);
            OutputFile.mayWrite(file, force);
            Path beside = file.resolveSibling("." + file.getFileName() + "-" + UUID.randomUUID());
            source.write(plan.plan().file(), beside);
            OutputFile.publish(beside, file);
            return plan;
        });
    }

    @Override
    public Plan keptPlan(Survey survey, int number) throws DeskException {
        Path home = survey.project().stored().map(Stored::home).orElseThrow(() -> new DeskException(
                Trouble.INPUT, "This is a folder of plain files, which keeps no plans. \"project create\" makes a"
                        + " project."));
        Plan plan = read(home, source ->
                StoredFiles.plan(source, StoredFiles.version(source.journal().state(), number, home), single));
        SingleFiles.mustKnowBoards(plan, number + " of the project " + home, survey);
        return plan;
    }

    @Override
    public Optional<Entry> keepPlan(Survey survey, Path planFile, Author author) throws DeskException {
        Optional<Stored> stored = survey.project().stored();
        if (stored.isEmpty() || !Files.isDirectory(stored.get().home())) {
            return Optional.empty();
        }
        return open(stored.get().home(), store -> {
            Original plan = store.keep(PLAN, planFile);
            return Optional.of(store.append(new Change.Planned(plan, survey.project().title(),
                    survey.project().date(), stored.get().state().entry()), author));
        });
    }

    @Override
    public Entry correct(Survey survey, AssetTag machine, Fact fact, String value, Author author)
            throws DeskException {
        return decide(survey, decisions.correction(survey, machine, fact, value), author);
    }

    @Override
    public Entry pin(Survey survey, AssetTag machine, Map<String, String> slots, Author author)
            throws DeskException {
        return decide(survey, decisions.pin(survey, machine, slots), author);
    }

    @Override
    public List<Entry> mute(Survey survey, String code, Optional<AssetTag> machine, Author author)
            throws DeskException {
        return decide(survey, decisions.mutes(survey, code, machine), author);
    }

    private Entry decide(Survey survey, Decision decision, Author author) throws DeskException {
        return decide(survey, Set.of(decision), author).get(0);
    }

    private List<Entry> decide(Survey survey, Set<? extends Decision> decided, Author author) throws DeskException {
        Stored stored = survey.project().stored().orElseThrow(() -> new DeskException(Trouble.INPUT,
                "This is a folder of plain files, which keeps no decisions. \"project create\" makes a project."));
        return open(stored.home(), store -> {
            List<Entry> entries = new ArrayList<>();
            for (Decision decision : decided) {
                entries.add(store.append(new Change.Decided(decision), author, stored.state().entry()));
            }
            return entries;
        });
    }

    @Override
    public ProjectDifference compare(Path project, long before, OptionalLong after, Progress progress)
            throws DeskException {
        return comparison.compare(project, before, after, progress);
    }

    @Override
    public TeamDesk team() {
        return new DefaultTeamDesk(this, stores);
    }

    @Override
    public Watch watch(Path project, ProjectListener listener) throws DeskException {
        try {
            return stores.watch(project, listener);
        } catch (StoreException problem) {
            throw said(problem);
        }
    }

    private <T> T read(Path place, Work<ProjectSource, T> work) throws DeskException {
        try (ProjectSource source = stores.read(place)) {
            return work.on(source);
        } catch (StoreException problem) {
            throw said(problem);
        }
    }

    private <T> T open(Path folder, Work<ProjectStore, T> work) throws DeskException {
        try (ProjectStore store = stores.open(folder)) {
            return work.on(store);
        } catch (StoreException problem) {
            throw said(problem);
        }
    }

    static DeskException said(StoreException problem) {
        Trouble trouble = switch (problem.trouble()) {
            case MISSING, IN_USE, CHANGED, DAMAGED, NEWER, REFUSED -> Trouble.INPUT;
            case AWAY -> Trouble.AWAY;
            case DENIED -> Trouble.DENIED;
            case EXISTS -> Trouble.EXISTS;
            case UNWRITABLE -> Trouble.OUTPUT;
        };
        return new DeskException(trouble, problem.getMessage(), problem);
    }
}
