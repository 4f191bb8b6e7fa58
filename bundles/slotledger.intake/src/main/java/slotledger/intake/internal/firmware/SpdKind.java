package slotledger.intake.internal.firmware;

import java.util.Optional;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.spd.ModuleShape;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdModule;
import slotledger.firmware.spd.SpdType;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/** The kind of module that an SPD image describes. */
public final class SpdKind {

    private static final int STEP_BITS = 10;
    private static final int DDR3_LOW = 1350;
    private static final int DDR3_USUAL = 1500;

    private SpdKind() {
    }

    /** Empty where the image doesn't even tell the capacity. */
    public static Optional<ModuleKind> of(SpdModule module) {
        Optional<ByteCount> size = module.get(SpdFacts.CAPACITY).filter(bytes -> bytes.bytes() >> STEP_BITS > 0);
        if (size.isEmpty()) {
            return Optional.empty();
        }
        ModuleKind kind = ModuleKind.ofCapacity(Capacity.ofKiB(size.get().bytes() >> STEP_BITS));
        Optional<Generation> generation = module.get(SpdFacts.TYPE).flatMap(SpdKind::generation);
        kind = generation.isPresent() ? kind.with(generation.get()) : kind;
        Optional<ModuleShape> shape = module.get(SpdFacts.SHAPE);
        Optional<Form> form = shape.flatMap(known -> form(known, generation));
        kind = form.isPresent() ? kind.with(form.get()) : kind;
        Optional<Buffering> buffering = shape.flatMap(SpdKind::buffering);
        kind = buffering.isPresent() ? kind.with(buffering.get()) : kind;
        return Optional.of(withChips(kind, module, generation));
    }

    private static ModuleKind withChips(ModuleKind start, SpdModule module, Optional<Generation> generation) {
        ModuleKind kind = start;
        Optional<Integer> ranks = module.get(SpdFacts.RANKS).filter(count -> count > 0);
        kind = ranks.isPresent() ? kind.withRanks(ranks.get()) : kind;
        Optional<ChipWidth> width = module.get(SpdFacts.CHIP_WIDTH).flatMap(ChipWidth::ofBits);
        kind = width.isPresent() ? kind.with(width.get()) : kind;
        Optional<Integer> density = module.get(SpdFacts.DENSITY).filter(size -> size > 0);
        kind = density.isPresent() ? kind.with(ChipSize.ofMbit(density.get())) : kind;
        Optional<Integer> logical = module.get(SpdFacts.LOGICAL_RANKS);
        if (ranks.isPresent() && logical.isPresent() && logical.get() >= ranks.get()) {
            kind = kind.withStack(logical.get() / ranks.get());
        }
        Optional<Integer> check = module.get(SpdFacts.CHECK_WIDTH);
        if (check.isPresent()) {
            kind = kind.with(check.get() > 0 ? ErrorCheck.ECC : ErrorCheck.NONE);
        }
        Optional<Integer> rate = module.get(SpdFacts.RATE).filter(known -> known > 0 && known < 20_000);
        kind = rate.isPresent() ? kind.with(Rate.of(rate.get())) : kind;
        Optional<Integer> volts = module.get(SpdFacts.VOLTAGE).filter(known -> known >= 500 && known <= 12_000);
        if (volts.isEmpty()) {
            return kind;
        }
        // DDR3 at 1.35 V works at 1.5 V too: JESD79-3-1.
        boolean both = generation.filter(Generation.DDR3::equals).isPresent() && volts.get() == DDR3_LOW;
        return both ? kind.with(Voltage.ofMillivolts(DDR3_LOW), Voltage.ofMillivolts(DDR3_USUAL))
                : kind.with(Voltage.ofMillivolts(volts.get()));
    }

    private static Optional<Generation> generation(SpdType type) {
        return Optional.ofNullable(switch (type) {
            case FPM -> Generation.FPM;
            case EDO -> Generation.EDO;
            case SDR -> Generation.SDR;
            case DDR -> Generation.DDR;
            case DDR2, DDR2_FB -> Generation.DDR2;
            case DDR3 -> Generation.DDR3;
            case DDR4, DDR4E -> Generation.DDR4;
            case LPDDR3 -> Generation.LPDDR3;
            case LPDDR4 -> Generation.LPDDR4;
            case LPDDR4X -> Generation.LPDDR4X;
            case DDR5 -> Generation.DDR5;
            case LPDDR5 -> Generation.LPDDR5;
            case LPDDR5X -> Generation.LPDDR5X;
            case DDR2_FB_PROBE, NVDIMM_P -> null;
        });
    }

    private static Optional<Form> form(ModuleShape shape, Optional<Generation> generation) {
        boolean lowPower = generation.filter(known -> known.compareTo(Generation.DDR5) > 0).isPresent();
        return Optional.ofNullable(switch (shape) {
            case UDIMM, RDIMM, LRDIMM, FB_DIMM, BUFFERED_DIMM, CUDIMM, MRDIMM -> Form.DIMM;
            case SO_DIMM, SO_UDIMM_72, SO_RDIMM_72, CSODIMM -> Form.SO_DIMM;
            case MICRO_DIMM -> Form.MICRO_DIMM;
            case MINI_RDIMM, MINI_UDIMM -> Form.MINI_DIMM;
            case CAMM2 -> lowPower ? Form.LPCAMM2 : Form.CAMM2;
            case SOLDERED -> Form.SOLDERED;
            case SO_DIMM_16, SO_DIMM_32, DDIMM -> null;
        });
    }

    private static Optional<Buffering> buffering(ModuleShape shape) {
        return Optional.ofNullable(switch (shape) {
            case UDIMM, SO_DIMM, SO_UDIMM_72, MICRO_DIMM, MINI_UDIMM, CUDIMM, CSODIMM, SOLDERED ->
                    Buffering.UNBUFFERED;
            case RDIMM, SO_RDIMM_72, MINI_RDIMM -> Buffering.REGISTERED;
            case LRDIMM -> Buffering.LOAD_REDUCED;
            case FB_DIMM -> Buffering.FULLY_BUFFERED;
            case BUFFERED_DIMM, SO_DIMM_16, SO_DIMM_32, MRDIMM, CAMM2, DDIMM -> null;
        });
    }
}
