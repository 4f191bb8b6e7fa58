package slotledger.intake.internal.firmware;

import java.util.Optional;
import slotledger.firmware.smbios.FormFactor;
import slotledger.firmware.smbios.MemoryType;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;

/** The standard's words for memory devices in the words of the trade. */
final class DeviceWords {

    private static final int NARROW_RIMM = 18;

    private DeviceWords() {
    }

    /** Empty where the word means several kinds, or none that is made as a module. */
    static Optional<Generation> generation(MemoryType type) {
        return Optional.ofNullable(switch (type) {
            case SDRAM -> Generation.SDR;
            case RDRAM -> Generation.RDRAM;
            case DDR -> Generation.DDR;
            case DDR2, DDR2_FB_DIMM, FBD2 -> Generation.DDR2;
            case DDR3 -> Generation.DDR3;
            case DDR4 -> Generation.DDR4;
            case DDR5, MRDIMM -> Generation.DDR5;
            case LPDDR3 -> Generation.LPDDR3;
            case LPDDR4 -> Generation.LPDDR4;
            case LPDDR5 -> Generation.LPDDR5;
            case OTHER, UNKNOWN, DRAM, EDRAM, VRAM, SRAM, RAM, ROM, FLASH, EEPROM, FEPROM, EPROM, CDRAM, THREE_D_RAM,
                    SGRAM, LPDDR, LPDDR2, LOGICAL_NON_VOLATILE, HBM, HBM2, HBM3 -> null;
        });
    }

    /** Chips that hold firmware or serve other than as main memory. */
    static boolean isNoMainMemory(MemoryType type) {
        return switch (type) {
            case ROM, FLASH, EEPROM, FEPROM, EPROM, VRAM -> true;
            case OTHER, UNKNOWN, DRAM, EDRAM, SRAM, RAM, CDRAM, THREE_D_RAM, SDRAM, SGRAM, RDRAM, DDR, DDR2,
                    DDR2_FB_DIMM, DDR3, FBD2, DDR4, LPDDR, LPDDR2, LPDDR3, LPDDR4, LOGICAL_NON_VOLATILE, HBM, HBM2,
                    DDR5, LPDDR5, HBM3, MRDIMM -> false;
        };
    }

    /** Low-power memory is soldered, but for that on a compression-attached module. */
    static boolean isLowPower(MemoryType type) {
        return switch (type) {
            case LPDDR, LPDDR2, LPDDR3, LPDDR4, LPDDR5 -> true;
            case OTHER, UNKNOWN, DRAM, EDRAM, VRAM, SRAM, RAM, ROM, FLASH, EEPROM, FEPROM, EPROM, CDRAM, THREE_D_RAM,
                    SDRAM, SGRAM, RDRAM, DDR, DDR2, DDR2_FB_DIMM, DDR3, FBD2, DDR4, LOGICAL_NON_VOLATILE, HBM, HBM2,
                    DDR5, HBM3, MRDIMM -> false;
        };
    }

    /** Empty where the word doesn't tell the form, or not together with the generation. */
    static Optional<Form> form(FormFactor form, Optional<Generation> generation, int dataWidth) {
        return Optional.ofNullable(switch (form) {
            case DIMM, FB_DIMM, CUDIMM -> Form.DIMM;
            case SODIMM, CSODIMM -> Form.SO_DIMM;
            case RIMM -> rimm(generation, dataWidth);
            case CHIP, ROW_OF_CHIPS, DIE -> Form.SOLDERED;
            case CAMM -> generation.filter(Generation.DDR5::equals).isPresent() ? Form.CAMM2
                    : generation.isPresent() ? Form.LPCAMM2 : null;
            case SIMM -> generation.filter(known -> known == Generation.FPM || known == Generation.EDO).isPresent()
                    ? Form.SIMM_72 : null;
            case OTHER, UNKNOWN, SIP, DIP, ZIP, PROPRIETARY, TSOP, SRIMM -> null;
        });
    }

    private static Form rimm(Optional<Generation> generation, int dataWidth) {
        if (generation.isEmpty()) {
            return null;
        }
        if (generation.get() != Generation.RDRAM) {
            return Form.DIMM;
        }
        return dataWidth > NARROW_RIMM ? Form.RIMM_232 : Form.RIMM_184;
    }
}
