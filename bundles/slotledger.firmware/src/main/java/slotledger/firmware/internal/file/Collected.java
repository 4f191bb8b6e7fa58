package slotledger.firmware.internal.file;

import java.util.List;
import java.util.Optional;
import slotledger.firmware.fact.Problem;

/**
 * Content to be read.
 *
 * @param entryPoint of the table, where a second file beside it holds it
 * @param problems   why there is no content; none where there is
 */
public record Collected(String place, byte[] content, Optional<byte[]> entryPoint, List<Problem> problems) {

    static Collected of(String place, byte[] content) {
        return new Collected(place, content, Optional.empty(), List.of());
    }

    static Collected refused(String place, String seen, String expected) {
        return new Collected(place, new byte[0], Optional.empty(), List.of(Problem.of("the file", seen, expected)));
    }
}
