package slotledger.firmware.internal.spd;

import java.util.Optional;
import java.util.OptionalInt;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Coded;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdModule;
import slotledger.firmware.spd.SpdType;

/** Decodes SPD images, SDR to DDR5. No input makes it throw. */
public final class SpdDecoder {

    /** What is less than this has no checksum of any generation. */
    static final int SMALLEST = 64;
    static final int LARGEST = 2048;
    private static final int MBIT_BYTES_SHIFT = 17;

    private SpdDecoder() {
    }

    /** Empty where the bytes are no SPD image of a kind that is known. */
    public static Optional<SpdModule> decode(byte[] data) {
        if (data.length < SMALLEST || data.length > LARGEST) {
            return Optional.empty();
        }
        Optional<SpdType> type = Coded.find(SpdType.values(), data[2] & 0xFF);
        Image image = new Image(data);
        if (type.isEmpty() || !isPlausible(image, type.get())) {
            return Optional.empty();
        }
        image.fact(SpdFacts.TYPE, 2, type.get());
        var profiles = switch (type.get()) {
            case FPM, EDO, SDR, DDR, DDR2 -> ParallelSpd.decode(image, type.get());
            case DDR2_FB, DDR2_FB_PROBE -> FullyBufferedSpd.decode(image, type.get());
            case DDR3 -> Ddr3Spd.decode(image);
            case DDR4, DDR4E, LPDDR3, LPDDR4, LPDDR4X, LPDDR5, LPDDR5X -> Ddr4Spd.decode(image, type.get());
            case DDR5, NVDIMM_P -> Ddr5Spd.decode(image, type.get());
        };
        SpdChecks.check(image);
        return Optional.of(new SpdModule(image.facts().build(), profiles, image.problems().list()));
    }

    /** Whether the bytes are an image with right checksums, which other data hardly ever looks like. */
    public static boolean isSealed(byte[] data) {
        return decode(data).filter(module -> module.problems().stream()
                .noneMatch(problem -> problem.expected().equals(Image.SEALED))).isPresent();
    }

    /** Byte 0 counts bytes used: 128 for the old kinds, a code for the others. */
    private static boolean isPlausible(Image image, SpdType type) {
        return switch (type) {
            case FPM, EDO, SDR, DDR, DDR2 -> image.at(0) >= 64 && image.at(1) >= 7 && image.at(1) <= 13;
            case DDR2_FB, DDR2_FB_PROBE, DDR3 -> image.bits(0, 3, 0) >= 1 && image.bits(0, 3, 0) <= 3;
            case DDR4, DDR4E, LPDDR3, LPDDR4, LPDDR4X, LPDDR5, LPDDR5X ->
                image.bits(0, 3, 0) >= 1 && image.bits(0, 3, 0) <= 4;
            case DDR5, NVDIMM_P -> image.bits(0, 6, 4) >= 1;
        };
    }

    /** Sets cycle time and the grade it means. */
    static void cycle(Image image, SpdType type, int offset, int picoseconds) {
        if (picoseconds <= 0) {
            image.unknown(SpdFacts.CYCLE, offset, "a cycle time above 0");
            return;
        }
        image.fact(SpdFacts.CYCLE, offset, picoseconds);
        OptionalInt grade = Grades.standard(type, picoseconds);
        if (grade.isPresent()) {
            image.fact(SpdFacts.RATE, offset, grade.getAsInt());
        } else {
            image.facts().unknown(SpdFacts.RATE, "%d MT/s".formatted(Grades.plain(type, picoseconds)));
            image.problem(offset, "a cycle time of %d ps, which is %d MT/s".formatted(picoseconds,
                    Grades.plain(type, picoseconds)), "a standard grade of " + type.text());
        }
    }

    /** Capacity by the chips: density of a die in Mbit, chips side by side, dies or ranks that follow each other. */
    static void capacity(Image image, int offset, int density, int dataWidth, int chipWidth, long stacked) {
        if (density > 0 && chipWidth > 0 && dataWidth >= chipWidth && stacked > 0) {
            image.fact(SpdFacts.CAPACITY, offset,
                    ByteCount.ofShifted((long) density * (dataWidth / chipWidth) * stacked, MBIT_BYTES_SHIFT));
        } else {
            image.facts().unknown(SpdFacts.CAPACITY, image.hex(offset, 1));
            image.problem(offset, "density %d Mbit, data width %d, chip width %d".formatted(density, dataWidth,
                    chipWidth), "values that give a capacity");
        }
    }

    /** The revision as two hexadecimal digits: encoding level, additions level. */
    static void revision(Image image) {
        image.fact(SpdFacts.REVISION, 1, image.bits(1, 7, 4) + "." + image.bits(1, 3, 0));
    }
}
