package slotledger.testkit;

import com.sun.jna.Function;
import com.sun.jna.NativeLibrary;
import com.sun.jna.Pointer;
import com.sun.jna.ptr.DoubleByReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * The solver HiGHS by its own C interface (highs_c_api.h of HiGHS 1.x, see its documentation, "C interface"), for
 * checks from outside. The library is one of those that come with OR-Tools, whose own door to it gives no answer where
 * a limit of time is reached.
 */
public final class Highs implements AutoCloseable {

    /** How a search ended; the numbers are those of HighsModelStatus. */
    public enum Ending {
        OPTIMAL(7), INFEASIBLE(8), TIME_LIMIT(13);

        private final int code;

        Ending(int code) {
            this.code = code;
        }

        private static Ending of(int code) {
            for (Ending ending : values()) {
                if (ending.code == code) {
                    return ending;
                }
            }
            throw new IllegalStateException("HiGHS ended with its status %d, which no check expects.".formatted(code));
        }
    }

    private static final int OK = 0;
    /** What HiGHS gives back where it did what was asked and has something to remark, such as a limit reached. */
    private static final int WARNING = 1;
    private static final double NOTHING_FOUND = 1e30;

    private final NativeLibrary library;
    private final Pointer highs;

    /**
     * Opens HiGHS.
     *
     * @param folder holds libhighs.so.1 and the libraries it wants
     */
    public Highs(Path folder) {
        library = NativeLibrary.getInstance(folder.resolve("libhighs.so.1").toString());
        highs = function("Highs_create").invokePointer(new Object[0]);
        accept("Highs_setBoolOptionValue", "output_flag", 0);
        accept("Highs_setIntOptionValue", "threads", 1);
        accept("Highs_setDoubleOptionValue", "mip_rel_gap", 0.0);
        accept("Highs_setDoubleOptionValue", "mip_abs_gap", 0.0);
    }

    /** Whether the folder holds the library; it does on Linux. */
    public static boolean isIn(Path folder) {
        return Files.isRegularFile(folder.resolve("libhighs.so.1"));
    }

    /** Reads a file of the forms .lp or .mps; one it can't read fails. */
    public void read(Path file) {
        accept("Highs_readModel", file.toString());
    }

    /** Solves what was read, for at most so many seconds. */
    public Ending solve(double seconds) {
        accept("Highs_setDoubleOptionValue", "time_limit", seconds);
        accept("Highs_run");
        return Ending.of(function("Highs_getModelStatus").invokeInt(new Object[] {highs}));
    }

    /** The value of the goal; empty where no solution was found. */
    public OptionalDouble value() {
        double value = function("Highs_getObjectiveValue").invokeDouble(new Object[] {highs});
        return Math.abs(value) < NOTHING_FOUND ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** What no solution is below, by its own floating point. */
    public double bound() {
        DoubleByReference bound = new DoubleByReference();
        accept("Highs_getDoubleInfoValue", "mip_dual_bound", bound);
        return bound.getValue();
    }

    @Override
    public void close() {
        function("Highs_destroy").invokeVoid(new Object[] {highs});
    }

    private void accept(String name, Object... arguments) {
        Object[] all = new Object[arguments.length + 1];
        all[0] = highs;
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        int status = function(name).invokeInt(all);
        if (status != OK && status != WARNING) {
            throw new IllegalStateException("HiGHS refused %s %s.".formatted(name, Arrays.asList(arguments)));
        }
    }

    private Function function(String name) {
        return library.getFunction(name);
    }
}
