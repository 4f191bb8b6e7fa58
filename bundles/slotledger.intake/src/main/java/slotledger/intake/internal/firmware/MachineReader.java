package slotledger.intake.internal.firmware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.Stream;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.smbios.OldMemoryFacts;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.BoardReport;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.source.Place;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Capacity;

/** Makes a machine of a table, or a finding that says why it is none. */
final class MachineReader {

    private static final int MOST_DAMAGE_SHOWN = 3;
    private static final int MOST_ACCESS_TIME = 500;

    private final Consumer<Finding> findings;

    MachineReader(Consumer<Finding> findings) {
        this.findings = findings;
    }

    /**
     * What a table says.
     *
     * @param machine     the machine
     * @param identity    what it is called
     * @param boardLimits what its arrays say, with their lies corrected
     * @param lies        what was wrong, by code
     */
    record Found(ObservedMachine machine, Identity identity, BoardLimits boardLimits, List<String> lies) {
        Found {
            lies = List.copyOf(lies);
        }

        BoardReport report() {
            return new BoardReport(machine, identity.otherNames(), identity.form(), boardLimits.largestTotal(),
                    boardLimits.corrects(), lies);
        }
    }

    /** The machine; empty, with a finding, where the table is of none that can be opened. */
    Optional<Found> read(SmbiosTable table, Place place) {
        Identity identity = Identity.of(table);
        AssetTag tag = new AssetTag(name(identity, place));
        damage(table, place, tag);
        if (identity.isVirtual()) {
            findings.accept(Doubt.note("firmware-virtual",
                    "This is a computer that another one plays; it has no slots.", "a machine that can be opened",
                    "Nothing; or leave it out of the collection.")
                    .at(place, identity.maker() + " " + identity.model()).about(tag));
            return Optional.empty();
        }
        Lies lies = new Lies();
        List<Structure> devices = devices(table, lies);
        List<ObservedSlot> slots = devices.isEmpty() ? old(table, place) : slots(devices, lies, place);
        if (slots.isEmpty()) {
            findings.accept(Doubt.error("firmware-no-memory",
                    "The table lists no memory; it is no machine's whole table.", "an entry for each slot",
                    "Collect the table of this machine again.")
                    .at(place, identity.maker() + " " + identity.model()).about(tag));
            return Optional.empty();
        }
        BoardLimits limits = BoardLimits.of(table, slots, lies);
        List<Finding> told = lies.findings(place, tag);
        told.forEach(findings);
        return Optional.of(new Found(machine(tag, identity, slots, place), identity, limits,
                told.stream().map(Finding::code).toList()));
    }

    private static String name(Identity identity, Place place) {
        String file = FileTag.of(place.file());
        if (FileTag.isTold(place.file())) {
            return file;
        }
        return Stream.of(identity.assetTag(), identity.host(), identity.serial(), file)
                .filter(text -> !text.isBlank()).findFirst().orElse(place.file());
    }

    private static ObservedMachine machine(AssetTag tag, Identity identity, List<ObservedSlot> slots, Place place) {
        boolean whole = slots.stream().noneMatch(slot -> slot.content() instanceof SlotContent.Unread);
        Capacity sum = slots.stream().map(slot -> slot.content().capacity()).reduce(Capacity.NONE, Capacity::plus);
        return new ObservedMachine(tag, identity.serial(), identity.maker(), identity.model(), new Whereabouts("", ""),
                "", "", "", identity.processor(),
                identity.processors() == 0 ? OptionalInt.empty() : OptionalInt.of(identity.processors()), "",
                OptionalInt.of(slots.size()), whole && !sum.isNone() ? Optional.of(sum) : Optional.empty(), slots,
                place);
    }

    private void damage(SmbiosTable table, Place place, AssetTag tag) {
        List<String> damage = table.problems().stream()
                .filter(problem -> problem.nature() == Problem.Nature.DAMAGE)
                .map(Problem::toString).toList();
        if (!damage.isEmpty()) {
            String rest = damage.size() > MOST_DAMAGE_SHOWN
                    ? " And %d more.".formatted(damage.size() - MOST_DAMAGE_SHOWN) : "";
            findings.accept(Doubt.warning("firmware-damaged", "Parts of the table could not be read.", "a whole table",
                    "Collect it again; where it stays so, read the missing parts off the machine.").at(place,
                            String.join(" ", damage.subList(0, Math.min(damage.size(), MOST_DAMAGE_SHOWN))) + rest)
                    .about(tag));
        }
    }

    private static List<Structure> devices(SmbiosTable table, Lies lies) {
        List<Structure> kept = new ArrayList<>();
        for (Structure device : table.memoryDevices()) {
            if (DeviceReader.isMainMemory(device)) {
                kept.add(device);
            }
        }
        table.all(StructureKind.DEVICE).stream()
                .filter(device -> !kept.contains(device) && !DeviceReader.isEmpty(device))
                .forEach(device -> lies.add(Lie.NO_MAIN_MEMORY, DeviceText.of(device)));
        return kept;
    }

    private static List<ObservedSlot> slots(List<Structure> devices, Lies lies, Place place) {
        List<Optional<String>> names = SlotNames.of(devices, lies);
        List<ObservedSlot> slots = new ArrayList<>();
        for (int i = 0; i < devices.size(); i++) {
            Structure device = devices.get(i);
            String shown = names.get(i).orElse("slot " + (i + 1));
            SlotContent content = new DeviceReader(device, shown, lies).content();
            slots.add(new ObservedSlot(names.get(i), content, DeviceText.part(device), DeviceText.serial(device),
                    place));
        }
        return slots;
    }

    /** Tables before version 2.1 tell only sizes and access times: DSP0134, section 7.7. */
    private static List<ObservedSlot> old(SmbiosTable table, Place place) {
        List<ObservedSlot> slots = new ArrayList<>();
        for (Structure module : table.all(StructureKind.MEMORY_MODULE)) {
            Optional<ByteCount> size = module.get(OldMemoryFacts.INSTALLED);
            SlotContent content = size.isEmpty() ? new SlotContent.Unread("a module")
                    : size.get().isNothing() ? SlotContent.EMPTY
                            : SlotContent.of(old(module, Capacity.ofKiB(Math.max(1, size.get().bytes() >> 10))));
            slots.add(new ObservedSlot(module.get(OldMemoryFacts.SOCKET), content, "", "", place));
        }
        return slots;
    }

    private static ModuleKind old(Structure module, Capacity capacity) {
        ModuleKind kind = ModuleKind.ofCapacity(capacity);
        return module.get(OldMemoryFacts.ACCESS_TIME).filter(time -> time > 0 && time <= MOST_ACCESS_TIME)
                .map(time -> kind.with(AccessTime.ofNanoseconds(time))).orElse(kind);
    }
}
