package slotledger.intake.internal.firmware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.FormFactor;
import slotledger.firmware.smbios.MemoryTechnology;
import slotledger.firmware.smbios.MemoryType;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.TypeDetail;
import slotledger.firmware.smbios.TypeDetail.Trait;
import slotledger.intake.internal.fleet.ModuleSize;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Facts;
import slotledger.model.family.Families;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Voltage;

/** Says what is in the slot that a memory device stands for. */
final class DeviceReader {

    /** "System Board Memory", "Onboard", "Motherboard" */
    private static final Pattern ON_BOARD = Pattern.compile("(?i).*(system ?board|motherboard|on-?board|soldered).*");
    /** No module is smaller than 1 MB, and none of DDR2 or later smaller than 128 MB; from memory. */
    private static final ByteCount SMALLEST = ByteCount.ofMib(1);
    private static final ByteCount SMALLEST_NEW = ByteCount.ofMib(128);
    private static final Set<MemoryTechnology> KEEPING = Set.of(MemoryTechnology.NVDIMM_N, MemoryTechnology.NVDIMM_F,
            MemoryTechnology.NVDIMM_P, MemoryTechnology.PERSISTENT);
    private static final int STEP_BITS = 10;
    private static final int DDR3_LOW = 1350;

    private final Structure device;
    private final String slot;
    private final Lies lies;

    DeviceReader(Structure device, String slot, Lies lies) {
        this.device = device;
        this.slot = slot;
        this.lies = lies;
    }

    /** Whether the device is memory that a machine works with. */
    static boolean isMainMemory(Structure device) {
        return device.get(DeviceFacts.TYPE).filter(DeviceWords::isNoMainMemory).isEmpty();
    }

    static boolean isEmpty(Structure device) {
        return device.get(DeviceFacts.SIZE).filter(ByteCount::isNothing).isPresent();
    }

    SlotContent content() {
        if (isEmpty(device)) {
            return SlotContent.EMPTY;
        }
        Optional<ByteCount> size = device.get(DeviceFacts.SIZE);
        if (size.isEmpty()) {
            lies.add(Lie.SIZE, slot);
            return new SlotContent.Unread(text());
        }
        boolean persistent = device.get(DeviceFacts.TECHNOLOGY).filter(KEEPING::contains).isPresent();
        if (persistent || device.get(DeviceFacts.TYPE).filter(MemoryType.LOGICAL_NON_VOLATILE::equals).isPresent()) {
            lies.add(Lie.PERSISTENT, slot);
            return new SlotContent.Unread(text());
        }
        ModuleKind kind = kind(corrected(size.get()));
        if (ModuleSize.check(kind).isPresent()) {
            lies.add(Lie.ODD_SIZE, slot + ": " + kind.capacity());
            return new SlotContent.Unread(text());
        }
        return SlotContent.of(kind);
    }

    private String text() {
        List<String> words = new ArrayList<>();
        device.get(DeviceFacts.SIZE).ifPresent(size -> words.add(size.toString()));
        device.get(DeviceFacts.TYPE).ifPresent(type -> words.add(type.text()));
        device.get(DeviceFacts.PART).ifPresent(words::add);
        return words.isEmpty() ? "a module" : String.join(" ", words);
    }

    private Capacity corrected(ByteCount size) {
        boolean isNew = device.get(DeviceFacts.TYPE).flatMap(DeviceWords::generation)
                .filter(known -> known.compareTo(Generation.DDR2) >= 0).isPresent();
        if (size.compareTo(isNew ? SMALLEST_NEW : SMALLEST) >= 0 || size.bytes() >> STEP_BITS == 0) {
            return Capacity.ofKiB(Math.max(1, size.bytes() >> STEP_BITS));
        }
        lies.add(Lie.UNIT, slot + ": " + size);
        return Capacity.ofKiB(size.bytes());
    }

    private ModuleKind kind(Capacity capacity) {
        Optional<Generation> generation = generation();
        Optional<Form> form = form(generation);
        List<Doubt> doubts = new ArrayList<>();
        Facts facts = device.get(DeviceFacts.RATE).filter(rate -> rate < 20_000 && rate > 1)
                .map(Facts::ofRate).orElseGet(Facts::new).and(Facts.ofSize(capacity));
        generation.ifPresent(facts::generation);
        form.ifPresent(facts::form);
        ModuleKind kind = facts.kind(doubts).orElseThrow();
        CheckBits bits = CheckBits.of(width(DeviceFacts.TOTAL_WIDTH), width(DeviceFacts.DATA_WIDTH));
        bits.lie().ifPresent(lie -> lies.add(lie, "%s: %d data, %d whole".formatted(slot,
                width(DeviceFacts.DATA_WIDTH), width(DeviceFacts.TOTAL_WIDTH))));
        if (bits.check().isPresent()) {
            kind = kind.with(bits.check().get());
        }
        Optional<Buffering> buffering = buffering(form);
        if (buffering.isPresent()) {
            kind = kind.with(buffering.get());
        }
        Optional<Integer> ranks = device.get(DeviceFacts.RANKS).filter(count -> count > 0 && count <= 16);
        if (ranks.isPresent()) {
            kind = kind.withRanks(ranks.get());
        }
        Voltage[] voltages = voltages(generation);
        return voltages.length == 0 ? kind : kind.with(voltages);
    }

    private int width(Fact<Integer> fact) {
        return device.get(fact).orElse(0);
    }

    private Optional<Generation> generation() {
        Optional<MemoryType> type = device.get(DeviceFacts.TYPE);
        Optional<Generation> told = type.flatMap(DeviceWords::generation);
        if (told.isEmpty()) {
            lies.add(Lie.TYPE, slot + type.map(known -> ": " + known.text()).orElse(""));
            return told;
        }
        Optional<Integer> rate = device.get(DeviceFacts.RATE);
        if (rate.isPresent() && isTooFast(told.get(), rate.get())) {
            lies.add(Lie.TYPE_AND_RATE, "%s: %s at %d MT/s".formatted(slot, told.get().text(), rate.get()));
            return Optional.empty();
        }
        return told;
    }

    /** Whether the memory is said to be half as fast again as its fastest grade: no overclocked one is. */
    private static boolean isTooFast(Generation generation, int rate) {
        return Families.grades(generation).stream().mapToInt(grade -> grade.rate().megatransfers()).max().stream()
                .anyMatch(fastest -> rate > fastest * 3 / 2);
    }

    private Optional<Form> form(Optional<Generation> generation) {
        Optional<FormFactor> told = device.get(DeviceFacts.FORM);
        boolean lowPower = device.get(DeviceFacts.TYPE).filter(DeviceWords::isLowPower).isPresent();
        if (lowPower && told.filter(FormFactor.CAMM::equals).isEmpty()) {
            if (told.filter(form -> form == FormFactor.DIMM || form == FormFactor.SODIMM).isPresent()) {
                lies.add(Lie.LOW_POWER_FORM, slot + ": " + told.get().text());
            }
            return Optional.of(Form.SOLDERED);
        }
        if (device.get(DeviceFacts.LOCATOR).filter(name -> ON_BOARD.matcher(name).matches()).isPresent()) {
            return Optional.of(Form.SOLDERED);
        }
        Optional<Form> form = told.flatMap(known ->
                DeviceWords.form(known, generation, width(DeviceFacts.DATA_WIDTH)));
        if (isRimm() && generation.filter(Generation.RDRAM::equals).isEmpty()) {
            lies.add(Lie.RIMM, slot + ": RIMM" + generation.map(known -> " with " + known.text()).orElse(""));
            return form;
        }
        if (form.isPresent() && generation.isPresent() && form.get() != Form.SOLDERED
                && Families.all().stream().noneMatch(family -> family.form() == form.get()
                        && family.generations().contains(generation.get()))
                || form.isEmpty() && told.filter(FormFactor.SIMM::equals).isPresent()) {
            lies.add(Lie.FORM, "%s: %s%s".formatted(slot, told.orElseThrow().text(),
                    generation.map(known -> " with " + known.text()).orElse("")));
            return Optional.empty();
        }
        return form;
    }

    private boolean isRimm() {
        return device.get(DeviceFacts.FORM).filter(FormFactor.RIMM::equals).isPresent();
    }

    private Optional<Buffering> buffering(Optional<Form> form) {
        MemoryType type = device.get(DeviceFacts.TYPE).orElse(MemoryType.UNKNOWN);
        if (type == MemoryType.DDR2_FB_DIMM || type == MemoryType.FBD2
                || device.get(DeviceFacts.FORM).filter(FormFactor.FB_DIMM::equals).isPresent()) {
            return Optional.of(Buffering.FULLY_BUFFERED);
        }
        Optional<TypeDetail> detail = device.get(DeviceFacts.DETAIL);
        boolean registered = detail.filter(known -> known.has(Trait.REGISTERED)).isPresent();
        boolean reduced = detail.filter(known -> known.has(Trait.LRDIMM)).isPresent();
        boolean unbuffered = detail.filter(known -> known.has(Trait.UNBUFFERED)).isPresent();
        if ((registered || reduced) && unbuffered) {
            return Optional.empty();
        }
        if (reduced) {
            return Optional.of(Buffering.LOAD_REDUCED);
        }
        if (registered) {
            return Optional.of(Buffering.REGISTERED);
        }
        if (unbuffered) {
            return Optional.of(Buffering.UNBUFFERED);
        }
        return isRimm() && type != MemoryType.RDRAM && form.filter(Form.DIMM::equals).isPresent()
                ? Optional.of(Buffering.REGISTERED) : Optional.empty();
    }

    /**
     * What the module works at, where what it runs at tells it. DDR3 at 1.5 V may be a low-voltage one or not; one at
     * 1.35 V works at both (JESD79-3-1).
     */
    private Voltage[] voltages(Optional<Generation> generation) {
        int millivolts = device.get(DeviceFacts.CONFIGURED_VOLTAGE).orElse(0);
        int told = generation.map(known -> switch (known) {
            case DDR3 -> DDR3_LOW;
            case DDR4 -> 1200;
            case DDR5 -> 1100;
            case FPM, EDO, SDR, RDRAM, DDR, DDR2, LPDDR3, LPDDR4, LPDDR4X, LPDDR5, LPDDR5X -> 0;
        }).orElse(0);
        if (told == 0 || millivolts != told) {
            return new Voltage[0];
        }
        return told == DDR3_LOW ? new Voltage[] {Voltage.ofMillivolts(DDR3_LOW), Voltage.ofMillivolts(1500)}
                : new Voltage[] {Voltage.ofMillivolts(told)};
    }

    /** Whether a module has check bits, where that is known. */
    static Optional<ErrorCheck> check(SlotContent content) {
        return content.module().flatMap(ModuleKind::errorCheck);
    }
}
