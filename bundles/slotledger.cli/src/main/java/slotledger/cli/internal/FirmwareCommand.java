package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.firmware.FirmwareReading;
import slotledger.model.task.Progress;

/** Shows what machines and modules say of themselves. */
@Command(
        name = "firmware",
        description = "Read what machines and modules say of themselves: SMBIOS tables (Linux, Windows, dumps), SPD "
                + "images (bytes or hex), dmidecode listings, Windows memory records (CSV, JSON, XML).",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger firmware /sys/firmware/dmi/tables",
            "  slotledger firmware module.spd",
            "  slotledger firmware tables.zip --json"
        })
final class FirmwareCommand extends DeskCommand {

    @Parameters(arity = "1..*", paramLabel = "FILE|FOLDER|ZIP", description = "What to read; told by content.")
    private List<Path> paths;

    FirmwareCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        List<FirmwareReading> readings = desk().firmware().read(paths);
        Answer.Builder answer = new Answer.Builder();
        readings.forEach(reading -> FirmwareText.lines(reading, answer));
        boolean clear = !readings.isEmpty() && readings.stream().allMatch(reading -> reading.problems().isEmpty());
        if (readings.isEmpty()) {
            answer.line("Nothing was found to read.");
        }
        return answer.fact("readings", readings.stream().map(FirmwareFacts::of).toList())
                .end(clear ? ExitCode.OK : ExitCode.DIFFERS);
    }
}
