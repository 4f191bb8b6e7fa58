package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The texts that cells of a workbook point to, as UTF-8 in a few large arrays: a million different texts take little
 * more memory than their letters. Those used last are kept ready as strings.
 */
final class SharedStrings {

    private static final int PAGE = 1 << 20;
    private static final int READY = 1 << 13;
    private static final int LENGTH_BYTES = 4;
    private static final int BYTE = 8;
    private static final int MASK = 0xff;

    private final List<byte[]> pages = new ArrayList<>();
    private final long mostBytes;
    private long[] starts = new long[1024];
    private int count;
    private int used = PAGE;
    private long bytes;
    private final String[] ready = new String[READY];
    private final int[] readyIndex = new int[READY];

    /**
     * Begins with no texts.
     *
     * @param mostBytes memory the texts may take
     */
    SharedStrings(long mostBytes) {
        this.mostBytes = mostBytes;
    }

    /** Reads a part with shared strings. */
    void read(PartXml xml) throws IOException {
        Letters text = new Letters();
        xml.nextChild();
        while (xml.nextChild()) {
            if (xml.name().equals("si")) {
                text.clear();
                appendRich(xml, text);
                add(TextCell.unescaped(text));
            } else {
                xml.skip();
            }
        }
        xml.finish();
    }

    /** Adds the runs of a text, but not the phonetic ones that only say how it is pronounced. */
    static void appendRich(PartXml xml, Letters text) throws IOException {
        while (xml.nextChild()) {
            switch (xml.name()) {
                case "t" -> xml.text(text);
                case "r" -> appendRun(xml, text);
                default -> xml.skip();
            }
        }
    }

    private static void appendRun(PartXml xml, Letters text) throws IOException {
        while (xml.nextChild()) {
            if (xml.name().equals("t")) {
                xml.text(text);
            } else {
                xml.skip();
            }
        }
    }

    void add(String text) throws BadSheetException {
        byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
        int needed = utf8.length + LENGTH_BYTES;
        bytes += needed + Long.BYTES;
        if (bytes > mostBytes) {
            throw BadSheetException.tooLarge("The workbook holds more than %d MB of different texts."
                    .formatted(mostBytes >> 20));
        }
        if (used + needed > PAGE) {
            pages.add(new byte[Math.max(PAGE, needed)]);
            used = 0;
        }
        if (count == starts.length) {
            starts = Arrays.copyOf(starts, count * 2);
        }
        starts[count] = (long) (pages.size() - 1) << Integer.SIZE | used;
        count++;
        byte[] page = pages.get(pages.size() - 1);
        for (int i = 0; i < LENGTH_BYTES; i++) {
            page[used + i] = (byte) (utf8.length >>> i * BYTE);
        }
        System.arraycopy(utf8, 0, page, used + LENGTH_BYTES, utf8.length);
        used = Math.min(PAGE, used + needed);
    }

    int size() {
        return count;
    }

    String get(int index) throws BadSheetException {
        if (index < 0 || index >= count) {
            throw BadSheetException.damaged("A cell points to text number %d of %d.".formatted(index, count), null);
        }
        int place = index & READY - 1;
        String text = ready[place];
        if (text == null || readyIndex[place] != index) {
            text = decoded(index);
            ready[place] = text;
            readyIndex[place] = index;
        }
        return text;
    }

    private String decoded(int index) {
        byte[] page = pages.get((int) (starts[index] >>> Integer.SIZE));
        int at = (int) starts[index];
        int length = 0;
        for (int i = 0; i < LENGTH_BYTES; i++) {
            length |= (page[at + i] & MASK) << i * BYTE;
        }
        return new String(page, at + LENGTH_BYTES, length, StandardCharsets.UTF_8);
    }
}
