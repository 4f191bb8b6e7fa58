package slotledger.firmware.internal.smbios;

import static slotledger.firmware.internal.smbios.FieldReader.BYTE;
import static slotledger.firmware.internal.smbios.FieldReader.DWORD;
import static slotledger.firmware.internal.smbios.FieldReader.QWORD;
import static slotledger.firmware.internal.smbios.FieldReader.WORD;

import java.util.Optional;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.fact.Problems;
import slotledger.firmware.smbios.AddressFacts;
import slotledger.firmware.smbios.ArrayFacts;
import slotledger.firmware.smbios.ArrayLocation;
import slotledger.firmware.smbios.ArrayUse;
import slotledger.firmware.smbios.ErrorCorrection;
import slotledger.firmware.smbios.MachineFacts;
import slotledger.firmware.smbios.OldMemoryFacts;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;

/** Reads the structures that memory needs; offsets are those of DSP0134, section 7. */
final class StructureDecoder {

    private static final int EXTENDED_CAPACITY_AT = 0x0F;
    private static final long SEE_EXTENDED = 0x8000_0000L;
    private static final long SEE_QWORD = 0xFFFF_FFFFL;
    private static final int UUID_AT = 0x08;
    private static final int[] UUID_ORDER = {3, 2, 1, 0, 5, 4, 7, 6, 8, 9, 10, 11, 12, 13, 14, 15};

    private final Problems problems;
    private final boolean networkOrder;

    StructureDecoder(Optional<String> version, Problems problems) {
        this.problems = problems;
        this.networkOrder = version.filter(told -> told.matches("2\\.[0-5]")).isPresent();
    }

    Structure decode(StructureKind kind, RawStructure raw) {
        String name = "%s 0x%04X".formatted(kind.title(), raw.handle());
        FieldReader fields = new FieldReader(raw, name, problems);
        switch (kind) {
            case BIOS -> fields.text(MachineFacts.VENDOR, 0x04).text(MachineFacts.VERSION, 0x05)
                    .text(MachineFacts.RELEASED, 0x08);
            case SYSTEM -> system(fields);
            case BOARD -> fields.text(MachineFacts.MAKER, 0x04).text(MachineFacts.PRODUCT, 0x05)
                    .text(MachineFacts.VERSION, 0x06).text(MachineFacts.SERIAL, 0x07)
                    .text(MachineFacts.ASSET_TAG, 0x08);
            case CHASSIS -> fields.text(MachineFacts.MAKER, 0x04)
                    .value(MachineFacts.CHASSIS_TYPE, 0x05, BYTE, ChassisTypes::text)
                    .text(MachineFacts.VERSION, 0x06)
                    .text(MachineFacts.SERIAL, 0x07).text(MachineFacts.ASSET_TAG, 0x08);
            case PROCESSOR -> processor(fields);
            case MEMORY_CONTROLLER -> fields
                    .value(OldMemoryFacts.LARGEST_MODULE, 0x08, BYTE, StructureDecoder::mibPower)
                    .number(OldMemoryFacts.SLOTS, 0x0E, BYTE);
            case MEMORY_MODULE -> fields.text(OldMemoryFacts.SOCKET, 0x04)
                    .number(OldMemoryFacts.ACCESS_TIME, 0x06, BYTE, 0)
                    .value(OldMemoryFacts.INSTALLED, 0x09, BYTE, StructureDecoder::moduleSize)
                    .value(OldMemoryFacts.ENABLED, 0x0A, BYTE, StructureDecoder::moduleSize);
            case ARRAY -> array(fields);
            case DEVICE -> DeviceDecoder.decode(fields);
            case ARRAY_ADDRESS -> {
                range(fields, 0x0F);
                fields.number(AddressFacts.ARRAY, 0x0C, WORD)
                        .number(AddressFacts.PARTITION_WIDTH, 0x0E, BYTE, 0);
            }
            case DEVICE_ADDRESS -> {
                range(fields, 0x13);
                fields.number(AddressFacts.DEVICE, 0x0C, WORD).number(AddressFacts.MAPPED, 0x0E, WORD)
                        .number(AddressFacts.ROW, 0x10, BYTE, 0xFF)
                        .number(AddressFacts.INTERLEAVE_POSITION, 0x11, BYTE, 0xFF)
                        .number(AddressFacts.INTERLEAVE_DEPTH, 0x12, BYTE, 0xFF);
            }
        }
        return new Structure(kind, raw.handle(), fields.facts().build());
    }

    private void system(FieldReader fields) {
        fields.text(MachineFacts.MAKER, 0x04).text(MachineFacts.PRODUCT, 0x05).text(MachineFacts.VERSION, 0x06)
                .text(MachineFacts.SERIAL, 0x07);
        if (fields.has(UUID_AT, UUID_ORDER.length)) {
            uuid(fields);
        }
        fields.text(MachineFacts.SKU, 0x19).text(MachineFacts.FAMILY, 0x1A);
    }

    /** The first three fields are little-endian since version 2.6: DSP0134, section 7.2.1. */
    private void uuid(FieldReader fields) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < UUID_ORDER.length; i++) {
            int at = UUID_AT + (networkOrder ? i : UUID_ORDER[i]);
            text.append(i == 4 || i == 6 || i == 8 || i == 10 ? "-" : "")
                    .append("%02x".formatted(fields.raw(at, BYTE)));
        }
        String uuid = text.toString();
        boolean unset = uuid.matches("[0-]+|[f-]+");
        fields.facts().told(MachineFacts.UUID, uuid, unset ? Optional.empty() : Optional.of(uuid));
    }

    private static void processor(FieldReader fields) {
        fields.text(MachineFacts.SOCKET, 0x04).text(MachineFacts.MAKER, 0x07).text(MachineFacts.VERSION, 0x10)
                .text(MachineFacts.SERIAL, 0x20).text(MachineFacts.ASSET_TAG, 0x21);
        count(fields, MachineFacts.CORES, 0x23, 0x2A);
        count(fields, MachineFacts.THREADS, 0x25, 0x2E);
    }

    private static void count(FieldReader fields, Fact<Integer> fact, int at, int wordAt) {
        if (fields.has(wordAt, WORD) && fields.raw(at, BYTE) == 0xFF) {
            fields.number(fact, wordAt, WORD, 0, 0xFFFF);
        } else {
            fields.number(fact, at, BYTE, 0);
        }
    }

    private static void array(FieldReader fields) {
        fields.coded(ArrayFacts.LOCATION, 0x04, ArrayLocation.values())
                .coded(ArrayFacts.USE, 0x05, ArrayUse.values())
                .coded(ArrayFacts.CORRECTION, 0x06, ErrorCorrection.values());
        if (fields.has(0x07, DWORD) && fields.raw(0x07, DWORD) == SEE_EXTENDED
                && fields.has(EXTENDED_CAPACITY_AT, QWORD)) {
            fields.value(ArrayFacts.LARGEST, EXTENDED_CAPACITY_AT, QWORD, raw -> raw <= 0
                    ? Optional.empty() : Optional.of(new ByteCount(raw)));
        } else {
            fields.value(ArrayFacts.LARGEST, 0x07, DWORD, kib -> kib == SEE_EXTENDED || kib == 0
                    ? Optional.empty() : Optional.of(ByteCount.ofKib(kib)));
        }
        fields.number(ArrayFacts.DEVICES, 0x0D, WORD);
    }

    private static void range(FieldReader fields, int extendedAt) {
        if (fields.has(extendedAt, 2 * QWORD) && fields.raw(0x04, DWORD) == SEE_QWORD) {
            fields.value(AddressFacts.START, extendedAt, QWORD, StructureDecoder::address)
                    .value(AddressFacts.END, extendedAt + QWORD, QWORD, StructureDecoder::address);
        } else {
            fields.value(AddressFacts.START, 0x04, DWORD, kib -> Optional.of(ByteCount.ofKib(kib)))
                    .value(AddressFacts.END, 0x08, DWORD,
                            kib -> Optional.of(new ByteCount(ByteCount.ofKib(kib + 1).bytes() - 1)));
        }
    }

    private static Optional<ByteCount> address(long raw) {
        return raw < 0 ? Optional.empty() : Optional.of(new ByteCount(raw));
    }

    /** 2^n MB. */
    private static Optional<ByteCount> mibPower(long power) {
        return power > 40 ? Optional.empty() : Optional.of(ByteCount.ofMib(1L << power));
    }

    /** DSP0134, section 7.7.2: bits 6:0 are a power of 2 in MB, or 7Dh unknown, 7Eh disabled, 7Fh not installed. */
    private static Optional<ByteCount> moduleSize(long raw) {
        int power = (int) raw & 0x7F;
        if (power == 0x7F || power == 0x7E) {
            return Optional.of(ByteCount.NOTHING);
        }
        return power == 0x7D ? Optional.empty() : mibPower(power);
    }
}
