package slotledger.export.internal.html;

import com.google.zxing.common.BitMatrix;
import slotledger.export.internal.code.TagCode;

/** A tag's code as a drawing inside a page. */
final class CodeSvg {

    private CodeSvg() {
    }

    static String of(TagCode code) {
        BitMatrix bits = code.bits();
        int quiet = code.quiet();
        int width = bits.getWidth() + 2 * quiet;
        int height = code.isBars() ? 30 : bits.getHeight() + 2 * quiet;
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < bits.getHeight(); y++) {
            for (int x = 0; x < bits.getWidth(); x++) {
                if (bits.get(x, y)) {
                    int run = 1;
                    while (x + run < bits.getWidth() && bits.get(x + run, y)) {
                        run++;
                    }
                    path.append('M').append(x + quiet).append(' ').append(code.isBars() ? 2 : y + quiet)
                            .append('h').append(run).append('v').append(code.isBars() ? 26 : 1)
                            .append("h-").append(run).append('z');
                    x += run;
                }
            }
        }
        return ("<svg class=\"code%s\" role=\"img\" aria-label=\"scannable code of the asset tag\" "
                + "viewBox=\"0 0 %d %d\" preserveAspectRatio=\"%s\" shape-rendering=\"crispEdges\">"
                + "<path fill=\"#fff\" d=\"M0 0h%dv%dH0z\"/>"
                + "<path fill=\"#000\" d=\"%s\"/></svg>\n")
                .formatted(code.isBars() ? "" : " square", width, height,
                        code.isBars() ? "none" : "xMidYMid meet", width, height, path);
    }
}
