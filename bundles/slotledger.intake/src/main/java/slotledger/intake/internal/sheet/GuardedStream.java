package slotledger.intake.internal.sheet;

import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;

/**
 * One part of a container, unpacked on the way: refuses what unpacks to more than an honest sheet can, what makes the
 * parser hold more than an honest cell can, and what does not have the checksum it was packed with.
 */
final class GuardedStream extends FilterInputStream {

    /** 1,048,576 rows of 100 cells of 40 bytes; nothing smaller is worth refusing as it is read in little memory. */
    static final long MOST_BYTES = 4L << 30;
    /** Ratio that is never looked at for parts smaller than this. */
    static final long SMALL = 128L << 20;
    /** Deflate can reach 1,032; sheets of equal cells reach 30, of empty rows without numbers several hundred. */
    static final long MOST_RATIO = 500;
    /** What the parser may take for one step: 32,767 characters of four bytes, each written as &#1234567; */
    static final long MOST_BYTES_A_STEP = 2L << 20;

    private final ZipEntry entry;
    private final Meter meter;
    private final CRC32 checksum = new CRC32();
    private long taken;
    private long stepStart;

    GuardedStream(InputStream in, ZipEntry entry, Meter meter) {
        super(in);
        this.entry = entry;
        this.meter = meter;
    }

    /** The parser has handed over what it had read. */
    void stepDone() {
        stepStart = taken;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
        int count;
        try {
            count = in.read(target, offset, length);
        } catch (ZipException | EOFException broken) {
            throw BadSheetException.damaged("The workbook's part %s is damaged or cut off.".formatted(entry.getName()),
                    broken);
        }
        if (count < 0) {
            if (entry.getCrc() != -1 && entry.getCrc() != checksum.getValue()) {
                throw BadSheetException.damaged("The workbook's part %s is damaged: its checksum is wrong."
                        .formatted(entry.getName()), null);
            }
            return count;
        }
        checksum.update(target, offset, count);
        taken += count;
        check();
        meter.add(count);
        return count;
    }

    private void check() throws BadSheetException {
        long packed = Math.max(1, entry.getCompressedSize());
        if (taken > MOST_BYTES || taken > SMALL && taken / packed > MOST_RATIO) {
            throw BadSheetException.tooLarge("The workbook's part %s unpacks to more than %d MB from %d KB."
                    .formatted(entry.getName(), taken >> 20, packed >> 10));
        }
        if (taken - stepStart > MOST_BYTES_A_STEP) {
            throw BadSheetException.tooLarge("The workbook's part %s holds a single value of more than %d MB."
                    .formatted(entry.getName(), MOST_BYTES_A_STEP >> 20));
        }
    }

    @Override
    public long skip(long count) throws IOException {
        throw new UnsupportedOperationException("A part must be read whole, as its checksum is checked.");
    }

    @Override
    public boolean markSupported() {
        return false;
    }
}
