package slotledger.firmware.internal.smbios;

import static slotledger.firmware.internal.smbios.FieldReader.BYTE;
import static slotledger.firmware.internal.smbios.FieldReader.DWORD;
import static slotledger.firmware.internal.smbios.FieldReader.QWORD;
import static slotledger.firmware.internal.smbios.FieldReader.WORD;

import java.util.Optional;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.internal.words.Jep106;
import slotledger.firmware.internal.words.Makers;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.FormFactor;
import slotledger.firmware.smbios.MemoryTechnology;
import slotledger.firmware.smbios.MemoryType;
import slotledger.firmware.smbios.TypeDetail;

/** Structure type 17: DSP0134, section 7.18. */
final class DeviceDecoder {

    private static final int SIZE_AT = 0x0C;
    private static final int LONG_SIZE_AT = 0x1C;
    private static final int SEE_LONG_SIZE = 0x7FFF;
    private static final int UNKNOWN_WORD = 0xFFFF;
    private static final int COUNTS_KIB = 0x8000;
    private static final long UNKNOWN_QWORD = -1;

    private DeviceDecoder() {
    }

    static void decode(FieldReader fields) {
        fields.number(DeviceFacts.ARRAY, 0x04, WORD, 0xFFFF, 0xFFFE)
                .number(DeviceFacts.TOTAL_WIDTH, 0x08, WORD, UNKNOWN_WORD, 0)
                .number(DeviceFacts.DATA_WIDTH, 0x0A, WORD, UNKNOWN_WORD, 0);
        size(fields);
        fields.coded(DeviceFacts.FORM, 0x0E, FormFactor.values())
                .number(DeviceFacts.SET, 0x0F, BYTE, 0xFF)
                .text(DeviceFacts.LOCATOR, 0x10)
                .text(DeviceFacts.BANK_LOCATOR, 0x11)
                .coded(DeviceFacts.TYPE, 0x12, MemoryType.values())
                .value(DeviceFacts.DETAIL, 0x13, WORD, bits -> Optional.of(TypeDetail.of((int) bits))
                        .filter(detail -> !detail.has(TypeDetail.Trait.UNKNOWN)));
        rate(fields, DeviceFacts.RATE, 0x15, 0x54);
        fields.text(DeviceFacts.MAKER, 0x17, Makers::meaning)
                .text(DeviceFacts.SERIAL, 0x18)
                .text(DeviceFacts.ASSET_TAG, 0x19)
                .text(DeviceFacts.PART, 0x1A)
                .value(DeviceFacts.RANKS, 0x1B, BYTE, bits -> Optional.of((int) (bits & 0xF)).filter(n -> n > 0));
        rate(fields, DeviceFacts.CONFIGURED_RATE, 0x20, 0x58);
        fields.number(DeviceFacts.LOWEST_VOLTAGE, 0x22, WORD, 0)
                .number(DeviceFacts.HIGHEST_VOLTAGE, 0x24, WORD, 0)
                .number(DeviceFacts.CONFIGURED_VOLTAGE, 0x26, WORD, 0)
                .coded(DeviceFacts.TECHNOLOGY, 0x28, MemoryTechnology.values())
                .value(DeviceFacts.MODULE_MAKER, 0x2C, WORD, DeviceDecoder::maker);
        bytes(fields, DeviceFacts.NON_VOLATILE_SIZE, 0x34);
        bytes(fields, DeviceFacts.VOLATILE_SIZE, 0x3C);
        bytes(fields, DeviceFacts.CACHE_SIZE, 0x44);
        bytes(fields, DeviceFacts.LOGICAL_SIZE, 0x4C);
    }

    private static void size(FieldReader fields) {
        if (!fields.has(SIZE_AT, WORD)) {
            fields.problem(0, "the structure ends before its size", "at least 21 bytes (version 2.1)");
            return;
        }
        int word = (int) fields.raw(SIZE_AT, WORD);
        if (word != SEE_LONG_SIZE) {
            fields.value(DeviceFacts.SIZE, SIZE_AT, WORD, raw -> wordSize(word));
        } else if (fields.has(LONG_SIZE_AT, DWORD)) {
            fields.value(DeviceFacts.SIZE, LONG_SIZE_AT, DWORD,
                    mib -> Optional.of(ByteCount.ofMib(mib & Integer.MAX_VALUE)));
        } else {
            fields.problem(SIZE_AT, "the size refers to a field that the structure is too short for",
                    "an extended size at 1Ch");
            fields.facts().unknown(DeviceFacts.SIZE, fields.hex(SIZE_AT, WORD));
        }
    }

    private static Optional<ByteCount> wordSize(int word) {
        if (word == UNKNOWN_WORD) {
            return Optional.empty();
        }
        return Optional.of((word & COUNTS_KIB) != 0 ? ByteCount.ofKib(word & ~COUNTS_KIB) : ByteCount.ofMib(word));
    }

    private static void rate(FieldReader fields, Fact<Integer> fact, int at, int longAt) {
        if (fields.has(at, WORD) && fields.raw(at, WORD) == UNKNOWN_WORD && fields.has(longAt, DWORD)) {
            fields.value(fact, longAt, DWORD, raw -> Optional.of((int) (raw & Integer.MAX_VALUE)).filter(n -> n > 0));
        } else {
            fields.number(fact, at, WORD, 0, UNKNOWN_WORD);
        }
    }

    /** The first byte counts continuation codes with parity, the second is the code: as bytes 320 and 321 of an SPD. */
    private static Optional<String> maker(long word) {
        return word == 0 ? Optional.empty() : Jep106.ofPair((int) word & 0xFF, (int) word >> 8);
    }

    private static void bytes(FieldReader fields, Fact<ByteCount> fact, int at) {
        fields.value(fact, at, QWORD, raw -> raw == UNKNOWN_QWORD || raw < 0
                ? Optional.empty() : Optional.of(new ByteCount(raw)));
    }
}
