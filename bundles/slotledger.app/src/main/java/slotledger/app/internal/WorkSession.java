package slotledger.app.internal;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.export.PlanFiles;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.PlanVersion;
import slotledger.model.project.ProjectState;
import slotledger.model.project.RunningState;
import slotledger.store.ProjectStore;
import slotledger.store.ProjectStores;
import slotledger.store.StoreException;

/**
 * One project that stays open for a moment between calls. What was read stays in memory even when it is closed: the
 * next opening reads only what came since.
 */
final class WorkSession {

    /** A burst of calls shares one opening. */
    private static final long IDLE_NANOS = TimeUnit.SECONDS.toNanos(1);
    /** Half of the time for which other programs wait for an embedded database. */
    private static final long LONGEST_NANOS = TimeUnit.SECONDS.toNanos(5);
    /** Others try every 50 ms, so that one who waits gets in. */
    private static final long GAP_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

    private final ProjectStores stores;
    private final SingleFiles single;
    private final Path folder;
    private final Map<String, Plan> plans = new LinkedHashMap<>();
    private final Map<String, Set<AssetTag>> opens = new LinkedHashMap<>();
    private ProjectStore store;
    private RunningState state;
    private long opened;
    private long used;
    private long madeRoom = System.nanoTime() - GAP_NANOS;

    WorkSession(ProjectStores stores, PlanFiles files, Path folder) {
        this.stores = stores;
        this.single = new SingleFiles(files);
        this.folder = folder;
    }

    /** What is done with the project while nobody else of this program does anything with it. */
    @FunctionalInterface
    interface Use<T> {
        T of(WorkSession session) throws StoreException, DeskException;
    }

    synchronized <T> T with(Use<T> use) throws StoreException, DeskException {
        if (store == null) {
            waitForOthers();
            store = state == null ? stores.open(folder) : stores.open(folder, state.journal());
            opened = System.nanoTime();
        } else {
            store.refresh();
        }
        follow();
        try {
            return use.of(this);
        } finally {
            used = System.nanoTime();
            if (used - opened > LONGEST_NANOS) {
                close();
                madeRoom = System.nanoTime();
            }
        }
    }

    private void waitForOthers() {
        long left = GAP_NANOS - (System.nanoTime() - madeRoom);
        if (left > 0) {
            try {
                TimeUnit.NANOSECONDS.sleep(left);
            } catch (InterruptedException stop) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void follow() {
        if (state == null) {
            state = RunningState.of(store.journal());
        } else {
            state.follow(store.journal());
        }
    }

    RunningState running() {
        return state;
    }

    ProjectState state() {
        return state.state();
    }

    ProjectStore store() {
        return store;
    }

    PlanVersion carriedOut() throws DeskException {
        return held(state().carriedOut());
    }

    /** The plan that rounds are made of, unless another is named. */
    PlanVersion toBeCarriedOut() throws DeskException {
        return held(state().toBeCarriedOut());
    }

    private PlanVersion held(Optional<PlanVersion> version) throws DeskException {
        return version.orElseThrow(() -> new DeskException(Trouble.INPUT, "The project " + folder
                + " keeps no plan yet, so there is no work. \"slotledger plan\" makes one."));
    }

    PlanVersion version(int number) throws DeskException {
        return state().plan(number).orElseThrow(() -> new DeskException(Trouble.INPUT, "The project " + folder
                + " has no plan " + number + ", or it was taken back. Nothing was written down."));
    }

    /** @throws StoreException of kind CHANGED where somebody else wrote first; then {@link #again} and look anew */
    Entry append(Change change, Author author) throws StoreException {
        Entry entry = store.append(change, author);
        follow();
        return entry;
    }

    void again() throws StoreException {
        store.refresh();
        follow();
    }

    /** A plan that was kept, read once. */
    Plan plan(PlanVersion version) throws StoreException, DeskException {
        String id = version.plan().file().sha256();
        if (!plans.containsKey(id)) {
            plans.put(id, StoredFiles.plan(store, version, single));
        }
        return plans.get(id);
    }

    /** Whether a plan opens a machine. */
    boolean hasJob(PlanVersion version, AssetTag machine) throws StoreException, DeskException {
        String id = version.plan().file().sha256();
        if (!opens.containsKey(id)) {
            opens.put(id, plan(version).work().stream().map(each -> each.machine().tag()).collect(Collectors.toSet()));
        }
        return opens.get(id).contains(machine);
    }

    synchronized void closeIfIdle() throws StoreException {
        if (store != null && System.nanoTime() - used > IDLE_NANOS) {
            close();
        }
    }

    synchronized void close() throws StoreException {
        if (store != null) {
            ProjectStore closing = store;
            store = null;
            closing.close();
        }
    }
}
