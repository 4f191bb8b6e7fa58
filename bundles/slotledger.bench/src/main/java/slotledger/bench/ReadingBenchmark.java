package slotledger.bench;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
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
    public long bareSax() throws Exception {
        return counted(Readers.bareSax(file));
    }

    @Benchmark
    public long bareAalto() throws Exception {
        return counted(Readers.bareAalto(file));
    }

    @Benchmark
    public long slotledger() throws Exception {
        return counted(Readers.slotledger(file));
    }

    @Benchmark
    public long fastexcel() throws Exception {
        return counted(Readers.fastexcel(file));
    }

    @Benchmark
    public long poiEvents() throws Exception {
        return counted(Readers.poiEvents(file));
    }

    @Benchmark
    public long poiUsermodel() throws Exception {
        return counted(Readers.poiUsermodel(file));
    }

    /** A reader that misses cells is not fast but wrong. */
    private long counted(long cells) {
        long expected = (long) rows * LargeWorkbook.COLUMNS;
        if (cells != expected) {
            throw new IllegalStateException("The reader found %d of %d cells.".formatted(cells, expected));
        }
        return cells;
    }
}
