package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.firmware.FirmwareReader;
import slotledger.firmware.FirmwareReading;

/** Reads what machines and modules say of themselves. */
final class Firmware {

    private Firmware() {
    }

    static List<FirmwareReading> read(List<Path> paths) throws DeskException {
        for (Path path : paths) {
            if (!Files.exists(path)) {
                throw new DeskException(Trouble.INPUT, "There is no file or folder " + path + ".");
            }
        }
        try {
            return new FirmwareReader().read(paths);
        } catch (NoSuchFileException gone) {
            throw new DeskException(Trouble.INPUT, "The file " + gone.getFile() + " is no longer there.", gone);
        } catch (IOException e) {
            throw new DeskException(Trouble.INPUT, "The files can't be read: " + e.getMessage()
                    + ". Tables of a running machine may need the rights of its administrator.", e);
        }
    }
}
