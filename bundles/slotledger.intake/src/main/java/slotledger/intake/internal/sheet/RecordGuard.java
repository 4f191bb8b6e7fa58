package slotledger.intake.internal.sheet;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Refuses a single record that would fill the memory, as one does whose quote is never closed. */
final class RecordGuard extends FilterReader {

    /** Far more than a row of a spreadsheet full of long texts. */
    static final int MOST_CHARACTERS = 1 << 24;

    private long taken;
    private long recordStart;
    private boolean ended;

    RecordGuard(Reader in) {
        super(in);
    }

    void recordDone() {
        recordStart = taken;
    }

    boolean hasEnded() {
        return ended;
    }

    @Override
    public int read() throws IOException {
        char[] one = new char[1];
        return read(one, 0, 1) < 0 ? -1 : one[0];
    }

    @Override
    public int read(char[] target, int offset, int length) throws IOException {
        int count = in.read(target, offset, length);
        if (count < 0) {
            ended = true;
            return count;
        }
        taken += count;
        if (taken - recordStart > MOST_CHARACTERS) {
            throw BadSheetException.tooLarge("A line, or a quote that is never closed, takes more than %d characters."
                    .formatted(MOST_CHARACTERS));
        }
        return count;
    }
}
