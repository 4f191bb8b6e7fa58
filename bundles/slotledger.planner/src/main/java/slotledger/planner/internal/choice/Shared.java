package slotledger.planner.internal.choice;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import slotledger.model.task.Progress;

/** Work on things that don't know of each other, shared among threads; the result doesn't depend on their number. */
final class Shared {

    private Shared() {
    }

    static <T> void forEach(List<T> things, Consumer<T> work, Progress progress, String what) {
        AtomicInteger done = new AtomicInteger();
        things.parallelStream().forEach(thing -> {
            progress.check();
            work.accept(thing);
            progress.step(what, done.incrementAndGet() / (double) things.size());
        });
    }
}
