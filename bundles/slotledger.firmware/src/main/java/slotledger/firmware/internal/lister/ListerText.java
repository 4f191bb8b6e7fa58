package slotledger.firmware.internal.lister;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.fact.Problems;
import slotledger.firmware.internal.smbios.TableChecks;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;

/**
 * Reads what dmidecode prints, in the spellings of its versions 2.0 to 3.6:
 *
 * <pre>
 * Handle 0x1100, DMI type 17, 40 bytes
 * Memory Device
 *     Size: 8 GB
 *
 * Handle 0x1100
 *     DMI type 17, 23 bytes.
 *     Memory Device
 *         Size: 256 MB
 * </pre>
 */
public final class ListerText {

    private static final Pattern HANDLE = Pattern.compile("Handle 0x([0-9A-Fa-f]{4,8})(?:, DMI type (\\d+),.*)?\\s*");
    private static final Pattern TYPE = Pattern.compile("\\s+DMI type (\\d+), \\d+ bytes\\.?\\s*");
    private static final Pattern VERSION = Pattern.compile("(?:# )?SMBIOS (\\d+\\.\\d+)(?:\\.\\d+)? present\\.");
    private static final Pattern VALUE = Pattern.compile("\\s+([^:\\s][^:]*): ?(.*)");
    private static final int MOST_STRUCTURES = 0x10000;

    private final Problems problems = new Problems();
    private final List<Structure> structures = new ArrayList<>();
    private Optional<String> version = Optional.empty();
    private int handle;
    private Optional<StructureKind> kind = Optional.empty();
    private TextFacts facts;
    private String indent;

    private ListerText() {
    }

    /** Whether there is at least one structure's head in it. */
    public static boolean looksLike(String text) {
        return text.lines().anyMatch(line -> HANDLE.matcher(line).matches());
    }

    /** One table for each listing: listings of several machines may follow each other in one file. */
    public static List<SmbiosTable> read(String text) {
        List<SmbiosTable> tables = new ArrayList<>();
        ListerText current = new ListerText();
        for (String line : (Iterable<String>) text.lines()::iterator) {
            if (line.startsWith("# dmidecode ") && current.hasBegun()) {
                tables.add(current.end());
                current = new ListerText();
            }
            current.line(line);
        }
        tables.add(current.end());
        return tables;
    }

    private boolean hasBegun() {
        return facts != null || !structures.isEmpty();
    }

    private void line(String line) {
        Matcher head = HANDLE.matcher(line);
        if (head.matches()) {
            finish();
            handle = (int) Long.parseLong(head.group(1), 16) & 0xFFFF;
            if (head.group(2) != null) {
                start(head.group(2));
            }
            return;
        }
        Matcher found = VERSION.matcher(line);
        if (found.matches()) {
            version = Optional.of(found.group(1));
            return;
        }
        Matcher type = TYPE.matcher(line);
        if (type.matches()) {
            start(type.group(1));
            return;
        }
        Matcher value = VALUE.matcher(line);
        if (facts != null && value.matches()) {
            String lead = line.substring(0, value.start(1));
            if (indent == null) {
                indent = lead;
            }
            if (lead.equals(indent)) {
                facts.add(value.group(1).strip(), value.group(2));
            }
        }
    }

    private void start(String type) {
        finish();
        kind = type.length() > 3 ? Optional.empty() : StructureKind.of(Integer.parseInt(type));
        facts = kind.map(known -> new TextFacts(known, "%s 0x%04X".formatted(known.title(), handle), problems))
                .orElse(null);
        indent = null;
    }

    private void finish() {
        if (facts != null && structures.size() < MOST_STRUCTURES) {
            structures.add(new Structure(kind.orElseThrow(), handle, facts.build()));
        }
        facts = null;
    }

    private SmbiosTable end() {
        finish();
        if (structures.stream().noneMatch(one -> one.kind() == StructureKind.DEVICE)) {
            problems.add(Problem.of("the listing", "no memory device is in it",
                    "the whole listing, or that of types 16 and 17"));
        }
        TableChecks.check(structures, problems);
        return new SmbiosTable(version, structures, problems.list());
    }
}
