package slotledger.intake.internal.sheet;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Counts what is taken from a stream. */
final class MeteredStream extends FilterInputStream {

    private final Meter meter;

    MeteredStream(InputStream in, Meter meter) {
        super(in);
        this.meter = meter;
    }

    @Override
    public int read() throws IOException {
        int one = in.read();
        meter.add(one < 0 ? 0 : 1);
        return one;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
        int count = in.read(target, offset, length);
        meter.add(Math.max(0, count));
        return count;
    }
}
