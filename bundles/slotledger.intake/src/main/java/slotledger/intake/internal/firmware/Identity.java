package slotledger.intake.internal.firmware;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.smbios.MachineFacts;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;
import slotledger.model.board.BoardForm;

/**
 * Which machine a table is of.
 *
 * @param maker      of the machine, or of its board where the machine has none; may be empty
 * @param model      as people call it; may be empty
 * @param otherNames of the same model
 * @param serial     of the machine; may be empty
 * @param assetTag   that somebody wrote into the firmware; may be empty
 * @param host       its name in the network; may be empty
 * @param processor  of the first one; may be empty
 * @param processors how many are there, 0 for unknown
 * @param form       of the chassis
 */
record Identity(String maker, String model, List<String> otherNames, String serial, String assetTag, String host,
        String processor, int processors, Optional<BoardForm> form) {

    private static final Pattern VIRTUAL = Pattern.compile(
            "(?i).*(vmware|virtualbox|innotek|qemu|bochs|virtual machine|hvm domu|openstack|kvm|parallels|bhyve).*");
    private static final Set<String> PORTABLE = Set.of("portable", "laptop", "notebook", "sub notebook", "convertible",
            "detachable", "tablet", "hand held");
    private static final Set<String> SERVER = Set.of("main server chassis", "rack mount chassis", "blade",
            "blade enclosing", "multi-system", "raid chassis");
    private static final Set<String> DESK = Set.of("desktop", "low profile desktop", "pizza box", "mini tower", "tower",
            "all in one", "space-saving", "mini pc", "lunch box", "sealed-case pc");

    Identity {
        otherNames = List.copyOf(otherNames);
    }

    static Identity of(SmbiosTable table) {
        String maker = first(table, StructureKind.SYSTEM, MachineFacts.MAKER);
        String product = first(table, StructureKind.SYSTEM, MachineFacts.PRODUCT);
        String version = first(table, StructureKind.SYSTEM, MachineFacts.VERSION);
        List<String> otherNames = List.of();
        if (product.isEmpty()) {
            // A computer of parts has a board with a name where the machine has none; common practice.
            maker = orElse(first(table, StructureKind.BOARD, MachineFacts.MAKER), maker);
            product = first(table, StructureKind.BOARD, MachineFacts.PRODUCT);
        } else if (maker.equalsIgnoreCase("lenovo") && version.matches(".*[A-Za-z].*\\s.*[A-Za-z0-9].*")) {
            // Lenovo keeps the name that people know in the version, and a type number in the name; common practice.
            otherNames = List.of(product);
            product = version;
        }
        List<Structure> processors = table.all(StructureKind.PROCESSOR).stream()
                .filter(each -> each.get(MachineFacts.VERSION).isPresent()).toList();
        String tag = orElse(first(table, StructureKind.CHASSIS, MachineFacts.ASSET_TAG),
                first(table, StructureKind.BOARD, MachineFacts.ASSET_TAG));
        String serial = orElse(first(table, StructureKind.SYSTEM, MachineFacts.SERIAL),
                first(table, StructureKind.CHASSIS, MachineFacts.SERIAL));
        return new Identity(maker, product, otherNames, serial, tag,
                first(table, StructureKind.SYSTEM, MachineFacts.HOST),
                processors.stream().findFirst().flatMap(each -> each.get(MachineFacts.VERSION)).orElse(""),
                processors.size(),
                table.first(StructureKind.CHASSIS).flatMap(each -> each.get(MachineFacts.CHASSIS_TYPE))
                        .flatMap(Identity::form));
    }

    /** Whether it is a computer that another one only plays. */
    boolean isVirtual() {
        return VIRTUAL.matcher(maker + " " + model).matches();
    }

    private static Optional<BoardForm> form(String chassis) {
        String word = chassis.toLowerCase(Locale.ROOT);
        return PORTABLE.contains(word) ? Optional.of(BoardForm.NOTEBOOK)
                : SERVER.contains(word) ? Optional.of(BoardForm.SERVER)
                        : DESK.contains(word) ? Optional.of(BoardForm.DESKTOP) : Optional.empty();
    }

    private static String orElse(String text, String other) {
        return text.isEmpty() ? other : text;
    }

    private static String first(SmbiosTable table, StructureKind kind, Fact<String> fact) {
        return table.all(kind).stream().map(each -> each.get(fact)).flatMap(Optional::stream).findFirst().orElse("");
    }
}
