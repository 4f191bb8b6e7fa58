package slotledger.cli.internal;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.model.family.Families;
import slotledger.model.family.Family;
import slotledger.model.task.Progress;

/** Shows the table of families. */
@Command(
        name = "families",
        description = "List the families of memory: pins, bits, voltages, grades, sizes; of one family also the notch, "
                + "the standards, and who says so.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger families",
            "  slotledger families rimm",
            "  slotledger families ddr4-so-dimm"
        })
final class FamiliesCommand extends DeskCommand {

    @Parameters(arity = "0..1", paramLabel = "NAME", description = "Id of a family, or words of its name.")
    private String name;

    FamiliesCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        List<Family> families = name == null ? Families.all() : Families.find(name);
        if (families.isEmpty()) {
            throw new DeskException(Trouble.INPUT, "No family of memory is called " + name
                    + ". The command \"families\" without a name lists them all.");
        }
        Answer.Builder answer = new Answer.Builder();
        if (families.size() == 1) {
            FamilyText.page(families.get(0)).forEach(answer::line);
        } else {
            FamilyText.table(families).forEach(answer::line);
        }
        return answer.fact("families", families.stream().map(FamilyText::facts).toList()).end(ExitCode.OK);
    }
}
