package slotledger.firmware;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.internal.cim.CimRecords;
import slotledger.firmware.internal.file.Collected;
import slotledger.firmware.internal.file.Collector;
import slotledger.firmware.internal.file.HexText;
import slotledger.firmware.internal.file.TextBytes;
import slotledger.firmware.internal.lister.ListerText;
import slotledger.firmware.internal.smbios.SmbiosDecoder;
import slotledger.firmware.internal.spd.SpdDecoder;
import slotledger.firmware.smbios.SmbiosTable;

/**
 * Reads what machines and modules say of themselves, in whatever form it was kept; the form is told by the content,
 * never by the name:
 *
 * <ul>
 * <li>SMBIOS tables: the two files of the Linux kernel in one folder ({@code smbios_entry_point}, {@code DMI}), a dump
 * with an entry point in it, the raw table as Windows returns it, or the bare table;
 * <li>SPD images, as bytes or as a hex dump in text;
 * <li>what the usual Linux lister of SMBIOS prints;
 * <li>records of DMTF's CIM classes Win32_PhysicalMemory and Win32_PhysicalMemoryArray, as CSV, JSON or XML;
 * <li>folders and ZIP archives of these.
 * </ul>
 *
 * <p>No content makes it throw or take unbounded memory: what is damaged becomes a {@link Problem}.
 */
public final class FirmwareReader {

    private static final String EXPECTED =
            "an SMBIOS table, an SPD image (bytes or hex dump), the text of a lister, or CIM records";

    /**
     * Reads files, folders and archives, in the order of their names.
     *
     * @throws IOException where a file can't be read
     */
    public List<FirmwareReading> read(List<Path> paths) throws IOException {
        List<FirmwareReading> readings = new ArrayList<>();
        for (Path path : paths) {
            each(path, (reading, done) -> readings.add(reading));
        }
        return readings;
    }

    /**
     * Reads a file, folder or archive in the order of names, and forgets each reading when it was taken. A file in a
     * folder that can't be read is a reading too.
     *
     * @throws IOException where the path itself can't be read
     */
    public void each(Path path, FirmwareSink sink) throws IOException {
        Collector.each(path, (one, done) -> read(one).forEach(reading -> sink.take(reading, done)));
    }

    /** Reads one file's content. */
    public List<FirmwareReading> read(String place, byte[] content) {
        return read(new Collected(place, content, Optional.empty(), List.of()));
    }

    private static List<FirmwareReading> read(Collected file) {
        String place = file.place();
        if (!file.problems().isEmpty()) {
            return List.of(new FirmwareReading.Refused(place, file.problems()));
        }
        byte[] content = file.content();
        if (file.entryPoint().isPresent()) {
            return List.of(new FirmwareReading.OfTable(place, SmbiosDecoder.decode(file.entryPoint().get(), content)));
        }
        Optional<String> text = TextBytes.decode(content);
        return text.isPresent() ? ofText(place, text.get()) : List.of(ofBytes(place, content, EXPECTED));
    }

    private static FirmwareReading ofBytes(String place, byte[] content, String expected) {
        Optional<SmbiosTable> table = SpdDecoder.isSealed(content) ? Optional.empty() : SmbiosDecoder.decode(content);
        if (table.isPresent()) {
            return new FirmwareReading.OfTable(place, table.get());
        }
        return SpdDecoder.decode(content).<FirmwareReading>map(module -> new FirmwareReading.OfModule(place, module))
                .orElseGet(() -> new FirmwareReading.Refused(place, List.of(new Problem(0, "the file",
                        "its %d bytes are none of the kinds that are read".formatted(content.length), expected))));
    }

    private static List<FirmwareReading> ofText(String place, String text) {
        List<SmbiosTable> tables = ListerText.looksLike(text) ? ListerText.read(text) : CimRecords.read(text);
        if (!tables.isEmpty()) {
            List<FirmwareReading> readings = new ArrayList<>();
            for (SmbiosTable table : tables) {
                String name = tables.size() == 1 ? place : place + "#" + (readings.size() + 1);
                readings.add(new FirmwareReading.OfTable(name, table));
            }
            return readings;
        }
        return List.of(HexText.read(text).map(bytes -> ofBytes(place, bytes, EXPECTED))
                .orElseGet(() -> new FirmwareReading.Refused(place, List.of(new Problem(0, "the file",
                        "text that none of the readers knows", EXPECTED)))));
    }
}
