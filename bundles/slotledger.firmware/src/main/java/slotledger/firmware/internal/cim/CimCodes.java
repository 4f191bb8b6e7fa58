package slotledger.firmware.internal.cim;

import java.util.Optional;
import slotledger.firmware.smbios.FormFactor;
import slotledger.firmware.smbios.MemoryType;

/**
 * Codes of the CIM schema, which are not those of SMBIOS: there a DIMM is 9, here it is 8. Source: Microsoft,
 * Win32_PhysicalMemory class, properties FormFactor and MemoryType.
 */
final class CimCodes {

    private CimCodes() {
    }

    /** Empty for unknown, for other, and for forms of packages that no memory module has. */
    static Optional<FormFactor> form(int code) {
        return Optional.ofNullable(switch (code) {
            case 2 -> FormFactor.SIP;
            case 3 -> FormFactor.DIP;
            case 4 -> FormFactor.ZIP;
            case 6 -> FormFactor.PROPRIETARY;
            case 7 -> FormFactor.SIMM;
            case 8 -> FormFactor.DIMM;
            case 9 -> FormFactor.TSOP;
            case 11 -> FormFactor.RIMM;
            case 12 -> FormFactor.SODIMM;
            case 13 -> FormFactor.SRIMM;
            default -> null;
        });
    }

    /** Empty for unknown and other; newer kinds have no code here, their number is in SMBIOSMemoryType. */
    static Optional<MemoryType> type(int code) {
        return Optional.ofNullable(switch (code) {
            case 2 -> MemoryType.DRAM;
            case 6 -> MemoryType.EDRAM;
            case 7 -> MemoryType.VRAM;
            case 8 -> MemoryType.SRAM;
            case 9 -> MemoryType.RAM;
            case 10 -> MemoryType.ROM;
            case 11 -> MemoryType.FLASH;
            case 12 -> MemoryType.EEPROM;
            case 13 -> MemoryType.FEPROM;
            case 14 -> MemoryType.EPROM;
            case 15 -> MemoryType.CDRAM;
            case 16 -> MemoryType.THREE_D_RAM;
            case 3, 17 -> MemoryType.SDRAM;
            case 18 -> MemoryType.SGRAM;
            case 19 -> MemoryType.RDRAM;
            case 20 -> MemoryType.DDR;
            case 21 -> MemoryType.DDR2;
            case 22 -> MemoryType.DDR2_FB_DIMM;
            case 24 -> MemoryType.DDR3;
            case 25 -> MemoryType.FBD2;
            case 26 -> MemoryType.DDR4;
            default -> null;
        });
    }
}
