package slotledger.firmware.internal.words;

import java.util.Optional;

/** The maker of a module as firmware names it. */
public final class Makers {

    private Makers() {
    }

    /** The name; that of JEDEC's list where the firmware only knows the number; empty for a placeholder. */
    public static Optional<String> meaning(String text) {
        return Placeholders.meaning(text).map(told -> Jep106.ofText(told).orElse(told));
    }
}
