package slotledger.serve.internal;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A link as a QR code (ISO/IEC 18004), with the four squares of light ground the standard asks for. */
final class PassCode {

    private static final int QUIET = 4;

    private PassCode() {
    }

    /** Nothing where the link is longer than any code holds. */
    static Optional<List<List<Boolean>>> of(URI link) {
        try {
            BitMatrix bits = new QRCodeWriter().encode(link.toString(), BarcodeFormat.QR_CODE, 1, 1,
                    Map.of(EncodeHintType.MARGIN, QUIET, EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M));
            List<List<Boolean>> rows = new ArrayList<>();
            for (int y = 0; y < bits.getHeight(); y++) {
                List<Boolean> row = new ArrayList<>();
                for (int x = 0; x < bits.getWidth(); x++) {
                    row.add(bits.get(x, y));
                }
                rows.add(row);
            }
            return Optional.of(rows);
        } catch (WriterException tooLong) {
            return Optional.empty();
        }
    }
}
