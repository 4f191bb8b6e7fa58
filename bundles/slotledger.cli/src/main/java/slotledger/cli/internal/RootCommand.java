package slotledger.cli.internal;

import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program itself: names its commands. */
@Command(
        name = "slotledger",
        description = "Plans memory for a fleet of computers: what each board takes, what to buy, which module goes in "
                + "which slot, and proof that it was done.",
        versionProvider = RootCommand.Version.class,
        subcommands = {
            TemplateCommand.class,
            CheckCommand.class,
            PlanCommand.class,
            InspectCommand.class,
            CurveCommand.class,
            AlternativesCommand.class,
            CompareCommand.class,
            PrintCommand.class,
            ProgrammeCommand.class,
            ArrivedCommand.class,
            ProveCommand.class,
            ExplainCommand.class,
            MatrixCommand.class,
            BoardsCommand.class,
            ProjectCommand.class,
            ServeCommand.class,
            LabelCommand.class,
            FirmwareCommand.class,
            ReconcileCommand.class,
            DraftCommand.class,
            KitCommand.class,
            FamiliesCommand.class,
            RulesCommand.class,
            ExitCodesCommand.class,
            HelpCommand.class
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger template --out my-school",
            "  slotledger check my-school",
            "  slotledger plan my-school --out my-school-plan",
            "  slotledger explain demo-fleet --machine H-1001 --module \"8GB 1Rx8 PC4-2666V-U\"",
            "  slotledger prove my-school --plan my-school-plan/plan.json --after inventory-after.xlsx"
        })
final class RootCommand implements Runnable {

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "Show the version.")
    private boolean version;

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Which command? See below.");
    }

    /** The bundle's version. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"slotledger " + Main.version()};
        }
    }
}
