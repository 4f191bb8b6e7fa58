package slotledger.firmware;

import java.util.List;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.spd.SpdModule;

/** What one file, or one entry of an archive, turned out to be. */
public sealed interface FirmwareReading {

    /** The file; an entry of an archive stands after an exclamation mark. */
    String place();

    List<Problem> problems();

    /** A machine's table, or a list of its records. */
    record OfTable(String place, SmbiosTable table) implements FirmwareReading {
        @Override
        public List<Problem> problems() {
            return table.problems();
        }
    }

    /** A module's SPD image. */
    record OfModule(String place, SpdModule module) implements FirmwareReading {
        @Override
        public List<Problem> problems() {
            return module.problems();
        }
    }

    /** Nothing that could be read. */
    record Refused(String place, List<Problem> problems) implements FirmwareReading {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
