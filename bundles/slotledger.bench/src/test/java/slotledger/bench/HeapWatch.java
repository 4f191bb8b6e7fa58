package slotledger.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;

/** How much memory this process takes. */
final class HeapWatch {

    private static final long MEBI = 1024 * 1024;

    private HeapWatch() {
    }

    /** Bytes of objects that are still in use. */
    static long used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    /** Most MiB the heap has held so far, waste included. */
    static long mostHeap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToLong(usage -> usage.getUsed() / MEBI).sum();
    }

    /** Most MiB the process has held so far, native memory of solvers included; -1 where the system doesn't say. */
    static long mostOfProcess() throws IOException {
        Path status = Path.of("/proc/self/status");
        if (!Files.isReadable(status)) {
            return -1;
        }
        return Files.readAllLines(status).stream()
                .filter(line -> line.startsWith("VmHWM:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
                .findFirst().orElse(-1);
    }
}
