package slotledger.cli.internal;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import slotledger.app.ProjectDesk;
import slotledger.app.Survey;
import slotledger.app.TeamDesk;
import slotledger.model.difference.ProjectDifference;
import slotledger.model.difference.Term;
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
import slotledger.model.project.ProjectListener;
import slotledger.model.project.Watch;
import slotledger.model.task.Progress;

/** A door to one small project that is never changed: remembers what it was asked. */
final class FakeProjects implements ProjectDesk {

    private static final Author ANNA = new Author("anna", "");

    private final List<String> calls;

    FakeProjects(List<String> calls) {
        this.calls = calls;
    }

    /** A fleet brought in, corrected, pinned; the second import taken back; a plan. */
    static Journal journal() {
        Original fleet = new Original("fleet.xlsx", "a".repeat(64), 10);
        return new Journal(entries(
                new Change.Created("school"),
                new Change.Imported(Map.of(Part.FLEET, List.of(fleet))),
                new Change.Imported(Map.of(Part.FLEET, List.of(fleet, fleet))),
                new Change.TakenBack(3),
                new Change.Decided(new Decision.Correction(new AssetTag("K-1"), Fact.ROLE, "ofice", "office")),
                new Change.Planned(fleet, "school", LocalDate.of(2026, 11, 24), 5)));
    }

    private static List<Entry> entries(Change... changes) {
        List<Entry> entries = new ArrayList<>();
        for (Change change : changes) {
            entries.add(new Entry(entries.size() + 1, Instant.parse("2026-11-28T12:00:00Z"),
                    entries.size() == 2 ? new Author("ben", "count of March") : ANNA, change, "seal"));
        }
        return entries;
    }

    @Override
    public ProjectDifference compare(Path project, long before, OptionalLong after, Progress progress) {
        calls.add("compare " + before + " with " + after);
        return new ProjectDifference(before, after.orElse(6), List.of(new Term("machine K-2", "none", "Kestrin KB-510"),
                new Term("role of K-1", "ofice", "office")), List.of(new Term("offer N/1", "8 GB", "none")), List.of(),
                List.of(), List.of(), List.of(), Optional.empty());
    }

    @Override
    public TeamDesk team() {
        return new FakeTeam(calls);
    }

    @Override
    public Watch watch(Path project, ProjectListener listener) {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean isProject(Path place) {
        return false;
    }

    @Override
    public void create(Path folder, Optional<Path> from, Author author) {
        calls.add("create " + folder + " from " + from.map(Path::toString).orElse("nothing") + " by " + author.who());
    }

    @Override
    public Optional<Entry> bringIn(Path project, List<Path> sources, Author author) {
        calls.add("import " + sources + " because of " + author.why());
        return Optional.of(journal().entries().get(1));
    }

    @Override
    public Journal history(Path project) {
        return journal();
    }

    @Override
    public Entry undo(Path project, OptionalLong entry, Author author) {
        calls.add("undo " + entry);
        return journal().entries().get(3);
    }

    @Override
    public Entry redo(Path project, OptionalLong entry, Author author) {
        calls.add("redo " + entry);
        return journal().entries().get(3);
    }

    @Override
    public void pack(Path project, Path file, boolean force) {
        calls.add("pack " + file + " " + force);
    }

    @Override
    public void unpack(Path file, Path folder) {
        calls.add("unpack " + file + " " + folder);
    }

    @Override
    public List<Path> writeFiles(Path project, OptionalLong entry, Path folder, boolean force) {
        calls.add("files " + entry + " " + folder);
        return List.of(folder.resolve("fleet.xlsx"));
    }

    @Override
    public void writePlan(Path project, int number, Path file, boolean force) {
        calls.add("plan " + number + " " + file);
    }

    @Override
    public Plan keptPlan(Survey survey, int number) {
        throw new UnsupportedOperationException("No command asks for it.");
    }

    @Override
    public Optional<Entry> keepPlan(Survey survey, Path planFile, Author author) {
        return Optional.empty();
    }

    @Override
    public Entry correct(Survey survey, AssetTag machine, Fact fact, String value, Author author) {
        calls.add("correct " + machine + " " + fact + " " + value);
        return journal().entries().get(4);
    }

    @Override
    public Entry pin(Survey survey, AssetTag machine, Map<String, String> slots, Author author) {
        calls.add("pin " + machine + " " + slots);
        return journal().entries().get(4);
    }

    @Override
    public List<Entry> mute(Survey survey, String code, Optional<AssetTag> machine, Author author) {
        calls.add("mute " + code + " " + machine.map(AssetTag::value).orElse("nobody"));
        return List.of(journal().entries().get(4));
    }
}
