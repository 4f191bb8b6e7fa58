package slotledger.firmware.internal.smbios;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.firmware.fact.Problems;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;

/** Decodes SMBIOS tables in each form in which they are kept. No input makes it throw, or take more than it brings. */
public final class SmbiosDecoder {

    private static final int PARAGRAPH = 16;
    private static final int WINDOWS_HEADER = 8;
    /** The memory of a machine that a BIOS puts its entry point in: DSP0134, section 5.2. */
    private static final long[] USUAL_BASES = {0, 0xF0000, 0xE0000, 0xC0000};
    /** Where the lister's dump files keep the table, after the entry point. */
    private static final int DUMP_FILE_TABLE = 0x20;
    private static final int PLAUSIBLE_TYPES = 43;

    private SmbiosDecoder() {
    }

    /** Decodes data with an entry point in it, the raw table as Windows returns it, or a bare table; empty for else. */
    public static Optional<SmbiosTable> decode(byte[] data) {
        for (int at = 0; at < data.length; at += PARAGRAPH) {
            if (data[at] == '_' && isAnchor(data, at)) {
                return Optional.of(withEntryPoint(data, at));
            }
        }
        if (isWindows(data)) {
            Problems problems = new Problems();
            String version = Bytes.u8(data, 1) + "." + Bytes.u8(data, 2);
            int end = (int) Math.min(data.length, WINDOWS_HEADER + Bytes.u32(data, Integer.BYTES));
            return Optional.of(table(Optional.of(version), data, WINDOWS_HEADER, end, 0, problems));
        }
        return looksBare(data, 0) ? Optional.of(bare(data)) : Optional.empty();
    }

    /** Decodes the two files of the Linux kernel, {@code smbios_entry_point} and {@code DMI}. */
    public static SmbiosTable decode(byte[] entryPoint, byte[] data) {
        Problems problems = new Problems();
        Optional<EntryPoint> entry = EntryPoint.read(entryPoint, 0, problems);
        if (entry.isEmpty()) {
            problems.add(0, "the entry point", "it has no anchor", "_SM_, _SM3_ or _DMI_");
        }
        return table(entry.map(EntryPoint::version), data, 0, data.length, entry.map(EntryPoint::count).orElse(0),
                problems);
    }

    private static SmbiosTable bare(byte[] data) {
        return table(Optional.empty(), data, 0, data.length, 0, new Problems());
    }

    private static boolean isAnchor(byte[] data, int at) {
        return EntryPoint.read(data, at, new Problems()).isPresent();
    }

    private static SmbiosTable withEntryPoint(byte[] data, int at) {
        Problems problems = new Problems();
        EntryPoint entry = EntryPoint.read(data, at, problems).orElseThrow();
        List<Integer> starts = new ArrayList<>();
        for (long base : USUAL_BASES) {
            addStart(starts, data, entry.address() - base);
        }
        addStart(starts, data, at + DUMP_FILE_TABLE);
        addStart(starts, data, at + (long) entry.length());
        addStart(starts, data, at + (long) PARAGRAPH * 2);
        int best = -1;
        int most = -1;
        for (int start : starts) {
            TableWalk walk = new TableWalk(data, new Problems());
            int found = walk.between(start, end(data, start, entry), entry.count()).size();
            int score = looksBare(data, start) ? found + (walk.isSound() ? data.length : 0) : -1;
            if (score > most) {
                most = score;
                best = start;
            }
        }
        if (best < 0) {
            problems.add(at, "the entry point", "its table at address 0x%X is not in the data".formatted(
                    entry.address()), "the table in the same file, or a second file beside it");
            return new SmbiosTable(Optional.of(entry.version()), List.of(), problems.list());
        }
        return table(Optional.of(entry.version()), data, best, end(data, best, entry), entry.count(), problems);
    }

    private static void addStart(List<Integer> starts, byte[] data, long start) {
        if (start >= 0 && start < data.length && !starts.contains((int) start)) {
            starts.add((int) start);
        }
    }

    private static int end(byte[] data, int start, EntryPoint entry) {
        return (int) Math.min(data.length, start + entry.bytes());
    }

    private static boolean isWindows(byte[] data) {
        return data.length > WINDOWS_HEADER && data[1] >= 2 && data[1] <= 3
                && Math.abs(Bytes.u32(data, Integer.BYTES) - (data.length - WINDOWS_HEADER)) <= PARAGRAPH
                && looksBare(data, WINDOWS_HEADER);
    }

    /** Whether a structure with a known type and another one after it stand there. */
    private static boolean looksBare(byte[] data, int at) {
        TableWalk walk = new TableWalk(data, new Problems());
        List<RawStructure> first = walk.between(at, data.length, 2);
        return first.size() == 2 && first.stream().allMatch(one -> one.type() <= PLAUSIBLE_TYPES
                || one.type() >= 126)
                || first.size() == 1 && StructureKind.of(first.get(0).type()).isPresent()
                        && first.get(0).handle() < 0xFF00 && first.get(0).length() > 4 && data.length - at < 512;
    }

    private static SmbiosTable table(Optional<String> version, byte[] data, int from, int to, int count,
            Problems problems) {
        StructureDecoder decoder = new StructureDecoder(version, problems);
        List<Structure> structures = new ArrayList<>();
        for (RawStructure raw : new TableWalk(data, problems).between(from, to, count)) {
            if (raw.length() >= Integer.BYTES) {
                StructureKind.of(raw.type()).ifPresent(kind -> structures.add(decoder.decode(kind, raw)));
            }
        }
        TableChecks.check(structures, problems);
        return new SmbiosTable(version, structures, problems.list());
    }
}
