package slotledger.cli.internal;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.RoundWish.OpenTime;
import slotledger.model.work.Round.Window;

/** Reads when work is possible. */
final class OpenTimes {

    /** "Main / 101=2026-12-01 08:00-12:00". */
    private static final Pattern TIME =
            Pattern.compile("(?:(.*)=)?\\s*(\\d{4}-\\d{2}-\\d{2}) (\\d{2}:\\d{2})-(\\d{2}:\\d{2})\\s*");

    private OpenTimes() {
    }

    static OpenTime read(String text) throws DeskException {
        Matcher matcher = TIME.matcher(text);
        if (matcher.matches()) {
            try {
                LocalDate day = LocalDate.parse(matcher.group(2));
                return new OpenTime(matcher.group(1) == null ? "" : matcher.group(1), new Window(
                        LocalDateTime.of(day, LocalTime.parse(matcher.group(3))),
                        LocalDateTime.of(day, LocalTime.parse(matcher.group(4)))));
            } catch (DateTimeParseException | IllegalArgumentException problem) {
                throw new DeskException(Trouble.INPUT, "\"" + text + "\" is no time to work in: "
                        + problem.getMessage(), problem);
            }
        }
        throw new DeskException(Trouble.INPUT, "\"" + text + "\" is no time to work in. Write it like "
                + "\"2026-12-01 08:00-12:00\", with \"site=\" or \"site / room=\" before it where it is for one "
                + "place.");
    }
}
