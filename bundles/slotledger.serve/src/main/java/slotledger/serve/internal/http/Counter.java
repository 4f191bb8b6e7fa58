package slotledger.serve.internal.http;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/** Counts what happened within the last stretch of time, for each key; forgets the oldest keys when there are many. */
final class Counter {

    private static final int MOST_KEYS = 5_000;

    private final int most;
    private final long stretch;
    private final LongSupplier nanos;
    private final Map<String, Deque<Long>> times = new LinkedHashMap<>(16, 0.75f, true);

    Counter(int most, Duration stretch, LongSupplier nanos) {
        this.most = most;
        this.stretch = stretch.toNanos();
        this.nanos = nanos;
    }

    /** Takes the last one back, for who proved to be in the right. */
    synchronized void giveBack(String key) {
        Deque<Long> seen = times.get(key);
        if (seen != null) {
            seen.pollLast();
        }
    }

    /** Counts one more; false where the key is used up for now. */
    synchronized boolean take(String key) {
        Deque<Long> seen = times.computeIfAbsent(key, any -> new ArrayDeque<>());
        forget(seen);
        if (seen.size() >= most) {
            return false;
        }
        seen.addLast(nanos.getAsLong());
        if (times.size() > MOST_KEYS) {
            Iterator<String> oldest = times.keySet().iterator();
            oldest.next();
            oldest.remove();
        }
        return true;
    }

    private void forget(Deque<Long> seen) {
        while (!seen.isEmpty() && nanos.getAsLong() - seen.peekFirst() > stretch) {
            seen.removeFirst();
        }
    }
}
