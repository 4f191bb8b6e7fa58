package slotledger.cli.internal;

import org.osgi.framework.FrameworkUtil;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;

/** The command line as a component: what it needs of the other bundles comes through its constructor. */
@Component(service = Main.class)
public final class Main {

    static final int EXIT_OK = 0;
    static final int EXIT_USAGE = 2;
    /** As sysexits.h has it: an internal error (EX_SOFTWARE). */
    static final int EXIT_BROKEN = 70;

    @Activate
    public Main() {
    }

    /** Runs one command and returns the exit code. */
    int run(String[] arguments) {
        if (arguments.length == 1 && arguments[0].equals("--version")) {
            System.out.println("slotledger " + FrameworkUtil.getBundle(Main.class).getVersion());
            return EXIT_OK;
        }
        System.err.println("Unknown: " + String.join(" ", arguments));
        return EXIT_USAGE;
    }
}
