package slotledger.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Reads the same workbook in one way after the other. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ReadingBenchmark {

    private static final double NANOS_A_MILLI = 1e6;

    /** Rows of the workbook. */
    @Param("300000")
    private int rows;

    /** Where workbooks are. */
    @Param("target")
    private String folder;

    private Path file;

    @Setup
    public void find() throws Exception {
        file = LargeWorkbook.inFolder(Path.of(folder), rows);
    }

    @Benchmark
    public long bareSax(Processor processor) throws Exception {
        return measured(processor, Readers::bareSax);
    }

    @Benchmark
    public long bareAalto(Processor processor) throws Exception {
        return measured(processor, Readers::bareAalto);
    }

    @Benchmark
    public long slotledger(Processor processor) throws Exception {
        return measured(processor, Readers::slotledger);
    }

    @Benchmark
    public long fastexcel(Processor processor) throws Exception {
        return measured(processor, Readers::fastexcel);
    }

    @Benchmark
    public long poiEvents(Processor processor) throws Exception {
        return measured(processor, Readers::poiEvents);
    }

    @Benchmark
    public long poiUsermodel(Processor processor) throws Exception {
        return measured(processor, Readers::poiUsermodel);
    }

    /** A reader that misses cells is not fast but wrong. */
    private long measured(Processor processor, Way way) throws Exception {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long start = threads.getCurrentThreadCpuTime();
        long cells = way.read(file);
        processor.millis = (threads.getCurrentThreadCpuTime() - start) / NANOS_A_MILLI;
        long expected = (long) rows * LargeWorkbook.COLUMNS;
        if (cells != expected) {
            throw new IllegalStateException("The reader found %d of %d cells.".formatted(cells, expected));
        }
        return cells;
    }

    private interface Way {
        long read(Path file) throws Exception;
    }

    /** Processor time of the reading thread, which what else the machine does hardly touches. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Processor {
        /** Milliseconds of the last read. */
        public double millis;
    }
}
