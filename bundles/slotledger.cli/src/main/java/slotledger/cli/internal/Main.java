package slotledger.cli.internal;

import java.io.PrintWriter;
import org.osgi.framework.FrameworkUtil;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.CancelledException;
import slotledger.serve.PhoneService;

/** The command line as a component: what it needs of the other bundles comes through its constructor. */
@Component(service = Main.class)
public final class Main {

    /** For an installation that is not complete. */
    static final int EXIT_BROKEN = ExitCode.BROKEN.number();

    private static final int HELP_WIDTH = 110;

    private final FleetDesk desk;
    private final PhoneService phones;

    @Activate
    public Main(@Reference FleetDesk desk, @Reference PhoneService phones) {
        this.desk = desk;
        this.phones = phones;
    }

    /** Runs one command and returns the exit code. */
    int run(String[] arguments) {
        return run(arguments, Console.standard());
    }

    int run(String[] arguments, Console console) {
        desk.projects().team().askForPasswords(console::password);
        CommandLine line = new CommandLine(new RootCommand(), new CommandFactory(desk, phones, console));
        line.setOut(new PrintWriter(console.out(), true));
        line.setErr(new PrintWriter(console.err(), true));
        line.setUsageHelpWidth(HELP_WIDTH);
        line.setExecutionExceptionHandler((problem, command, parsed) -> {
            if (problem instanceof DeskException known) {
                console.complain(known.getMessage());
                return code(known.trouble()).number();
            }
            if (problem instanceof CancelledException) {
                console.complain("Stopped; nothing was written.");
                return ExitCode.CANCELLED.number();
            }
            console.complain("A fault in Slotledger itself. Please report what follows and what you did.");
            problem.printStackTrace(console.err());
            return ExitCode.BROKEN.number();
        });
        return line.execute(arguments);
    }

    private static ExitCode code(DeskException.Trouble trouble) {
        return switch (trouble) {
            case INPUT -> ExitCode.INPUT;
            case EXISTS -> ExitCode.EXISTS;
            case OUTPUT -> ExitCode.OUTPUT;
            case AWAY -> ExitCode.AWAY;
            case DENIED -> ExitCode.DENIED;
            case PLAN -> ExitCode.PLAN;
        };
    }

    static String version() {
        var bundle = FrameworkUtil.getBundle(Main.class);
        return bundle == null ? "unpacked" : bundle.getVersion().toString();
    }
}
