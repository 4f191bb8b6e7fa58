package slotledger.cli.internal;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands for the order of a plan, from approval to the last parcel. */
@Command(
        name = "order",
        description = "Follow the order of a plan from approval to the last parcel. The plan that was approved is the "
                + "order, whatever is planned later.",
        subcommands = {
            OrderShowCommand.class,
            OrderApproveCommand.class,
            OrderSentCommand.class,
            OrderConfirmedCommand.class,
            OrderReceivedCommand.class,
            OrderDrawCommand.class,
            OrderAllotCommand.class
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger project order approve school --by \"Head of school\"",
            "  slotledger project order sent school --supplier Quillon",
            "  slotledger project order received school --part QF-D4U8 --good 18 --dead 2 --tested",
            "  slotledger project order allot school --out now"
        })
final class ProjectOrderCommand implements Runnable {

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Which command? See below.");
    }
}
