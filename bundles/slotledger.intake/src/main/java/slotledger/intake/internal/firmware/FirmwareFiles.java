package slotledger.intake.internal.firmware;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;
import slotledger.firmware.FirmwareReader;
import slotledger.firmware.FirmwareReading;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;

/** Tells files of firmware from spreadsheets, and reads them one by one. */
public final class FirmwareFiles {

    /** What no table of a spreadsheet has in its first lines; the first is how a file of the collection kit begins. */
    private static final Pattern LISTING = Pattern.compile(
            "(?s)# Memory table of one computer.*|.*(?:^|\\n)Handle 0x[0-9A-F]{4}.*"
                    + "|.*(?:DeviceLocator|BankLabel|MemoryDevices).*");
    private static final int HEAD = 1 << 16;
    private static final int LARGEST = 32 << 20;

    private FirmwareFiles() {
    }

    /** Takes readings. */
    public interface Taker {
        void take(FirmwareReading reading, Place place);
    }

    /** Whether a path is a folder, an archive or a file of firmware; a name that says so is believed. */
    public static boolean isFirmware(Path path) {
        if (Files.isDirectory(path)) {
            return true;
        }
        String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
        if (!Files.isRegularFile(path) || name.matches(".*\\.(xlsx|xlsm|xls)")) {
            return false;
        }
        if (name.endsWith(".zip")) {
            return true;
        }
        try (InputStream stream = Files.newInputStream(path)) {
            byte[] head = stream.readNBytes(HEAD);
            if (name.matches(".*\\.(csv|tsv|txt)")) {
                String text = new String(head, head.length > 1 && head[1] == 0 || head.length > 1 && head[0] == -1
                        ? StandardCharsets.UTF_16LE : StandardCharsets.ISO_8859_1);
                return LISTING.matcher(text).matches();
            }
            return name.startsWith("firmware") || Files.size(path) <= LARGEST
                    && isUnderstood(path, head.length < HEAD ? head : Files.readAllBytes(path));
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static boolean isUnderstood(Path path, byte[] content) {
        return new FirmwareReader().read(path.toString(), content).stream()
                .anyMatch(reading -> !(reading instanceof FirmwareReading.Refused));
    }

    /** Hands over what a file, folder or archive holds. */
    public static void each(Path path, String step, Taker taker, Progress progress) throws IntakeException {
        try {
            new FirmwareReader().each(path, (reading, done) -> {
                progress.check();
                progress.step(step, done);
                taker.take(reading, Place.ofFile(FileTag.shown(path, reading.place())));
            });
        } catch (IOException problem) {
            throw new IntakeException(Doubt.error("firmware-not-readable", "It can't be read: %s."
                    .formatted(problem.getMessage()), "a file or folder of firmware that may be read",
                    "Check the name, and whether you may read it.").at(Place.ofFile(path.toString()), ""), problem);
        }
    }
}
