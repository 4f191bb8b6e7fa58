package slotledger.export.internal.code;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.oned.Code128Writer;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import slotledger.model.machine.AssetTag;

/**
 * The scannable code of an asset tag: bars (Code 128, ISO/IEC 15417) for a short tag in ASCII, else a square (QR,
 * ISO/IEC 18004) in UTF-8.
 *
 * @param format which code
 * @param bits   dark and light, one bit a bar width or square; bars are one row high
 * @param quiet  bits of light ground needed at each side
 */
public record TagCode(BarcodeFormat format, BitMatrix bits, int quiet) {

    private static final int SHORT = 20;
    private static final int QUIET_BARS = 10;
    private static final int QUIET_SQUARES = 4;
    /** Most bytes of a QR code with level M. */
    private static final int MOST_BYTES = 2331;

    /** The code, or nothing where the tag is longer than any code holds. */
    public static Optional<TagCode> of(AssetTag tag) {
        String text = tag.value();
        boolean plain = text.length() <= SHORT && text.chars().allMatch(c -> c >= ' ' && c <= '~');
        if (plain) {
            return Optional.of(new TagCode(
                    BarcodeFormat.CODE_128, new Code128Writer().encode(text, BarcodeFormat.CODE_128, 1, 1,
                            Map.of(EncodeHintType.MARGIN, 0)), QUIET_BARS));
        }
        if (text.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
            return Optional.empty();
        }
        Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
        hints.put(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name());
        hints.put(EncodeHintType.MARGIN, 0);
        hints.put(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M);
        try {
            BitMatrix bits = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 1, 1, hints);
            return Optional.of(new TagCode(BarcodeFormat.QR_CODE, bits, QUIET_SQUARES));
        } catch (WriterException e) {
            throw new IllegalStateException("The tag %s must fit into a QR code.".formatted(tag), e);
        }
    }

    public boolean isBars() {
        return format == BarcodeFormat.CODE_128;
    }
}
