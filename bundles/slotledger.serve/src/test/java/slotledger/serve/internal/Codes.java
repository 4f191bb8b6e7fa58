package slotledger.serve.internal;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Reads the codes of a page as a camera does: from a picture of them. */
final class Codes {

    private static final int SQUARE = 8;
    private static final Pattern DRAWING = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"[^>]*><path d=\"([^\"]+)\"");
    private static final Pattern DARK = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z");

    private Codes() {
    }

    /** What the code says that is the given one on the page, counted from 0. */
    static String read(String page, int which) throws Exception {
        List<MatchResult> drawings = DRAWING.matcher(page).results().toList();
        MatchResult drawing = drawings.get(which);
        int width = Integer.parseInt(drawing.group(1)) * SQUARE;
        int height = Integer.parseInt(drawing.group(2)) * SQUARE;
        int[] pixels = new int[width * height];
        Arrays.fill(pixels, 0xFFFFFF);
        for (MatchResult dark : DARK.matcher(drawing.group(3)).results().toList()) {
            int left = Integer.parseInt(dark.group(1)) * SQUARE;
            int top = Integer.parseInt(dark.group(2)) * SQUARE;
            for (int y = top; y < top + SQUARE; y++) {
                Arrays.fill(pixels, y * width + left, y * width + left + SQUARE, 0);
            }
        }
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(
                new RGBLuminanceSource(width, height, pixels)))).getText();
    }
}
