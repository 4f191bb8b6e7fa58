package slotledger.intake.internal.join;

import java.util.List;
import slotledger.intake.internal.value.Texts;
import slotledger.model.observed.Subject;

/** Compares names that people and firmware write differently. */
final class NameText {

    /** Words that firms put behind their names, and what processors carry beside their own. */
    private static final List<String> NOISE = List.of("(r)", "(tm)", "®", "™", " cpu", " processor", " inc.", " inc",
            " corporation", " corp.", " ltd.", " gmbh", " co.", " computer", " computers");
    private static final int LEAST_LETTERS = 3;

    private NameText() {
    }

    /** Whether two texts mean the same: letters and digits alike, or one within the other but for a serial number. */
    static boolean alike(Subject subject, String one, String other) {
        String a = key(subject, one);
        String b = key(subject, other);
        return switch (subject) {
            case SERIAL, MEMORY -> a.equals(b);
            case MAKER, MODEL, PROCESSOR -> a.equals(b)
                    || Math.min(a.length(), b.length()) >= LEAST_LETTERS && (a.contains(b) || b.contains(a));
        };
    }

    private static String key(Subject subject, String text) {
        String plain = Texts.fold(text);
        if (subject == Subject.PROCESSOR) {
            plain = plain.replaceFirst("@.*", "");
        }
        for (String noise : NOISE) {
            plain = plain.replace(noise, "");
        }
        return Texts.key(plain);
    }
}
