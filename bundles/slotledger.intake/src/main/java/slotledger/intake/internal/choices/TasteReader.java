package slotledger.intake.internal.choices;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import slotledger.intake.Known;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Nearest;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Written;
import slotledger.model.module.ModuleKind;
import slotledger.model.trade.Taste;
import slotledger.model.trade.Taste.About;
import slotledger.model.trade.Taste.Attitude;

/** Makes of what is written what is forbidden or preferred: looks up suppliers, makers and kinds. */
final class TasteReader {

    private static final int MOST_WORTH = 100;

    private final KindSearch kinds;
    private final BiConsumer<Doubt, Written> findings;
    private final Map<String, String> suppliers = new TreeMap<>();
    private final Map<String, String> makers = new TreeMap<>();

    TasteReader(Known known, KindSearch kinds, BiConsumer<Doubt, Written> findings) {
        this.kinds = kinds;
        this.findings = findings;
        known.market().suppliers().keySet().forEach(name -> suppliers.putIfAbsent(key(name), name));
        known.market().offers().forEach(offer ->
                offer.maker().ifPresent(maker -> makers.putIfAbsent(key(maker), maker)));
    }

    private static String key(String text) {
        return Texts.tidy(text).toLowerCase(Locale.ROOT);
    }

    /** What is meant; what is not known is left out with a finding. */
    List<Taste> read(Attitude attitude, About about, List<Written> names, int worth) {
        List<Taste> tastes = new ArrayList<>();
        for (Written written : names) {
            switch (about) {
                case KIND -> {
                    List<ModuleKind> meant = kinds.all(written);
                    if (!meant.isEmpty()) {
                        tastes.add(new Taste(
                                attitude, about, Texts.tidy(written.text()), meant, worth, written.place()));
                    }
                }
                case SUPPLIER -> named(attitude, about, written, suppliers, worth, tastes);
                case MAKER -> named(attitude, about, written, makers, worth, tastes);
            }
        }
        return tastes;
    }

    private void named(Attitude attitude, About about, Written written, Map<String, String> known, int worth,
            List<Taste> tastes) {
        String name = known.get(key(written.text()));
        if (name != null) {
            tastes.add(new Taste(attitude, about, name, List.of(), worth, written.place()));
            return;
        }
        String what = about.name().toLowerCase(Locale.ROOT);
        findings.accept(Doubt.error(what + "-not-known", "No offer is of this %s.".formatted(what),
                "a %s of the offers".formatted(what), advice(what, written.text(), known.values())), written);
    }

    private static String advice(String what, String written, Collection<String> known) {
        if (known.isEmpty()) {
            return "Give the offers a column \"%s\", or take the line out.".formatted(what);
        }
        return Nearest.to(written, known).map("Maybe \"%s\" is meant."::formatted)
                .orElse("Known are: " + String.join(", ", known) + ".");
    }

    /** How much dearer, in percent: "2 %"; 0, with a finding, where it is no whole number from 0 to 100. */
    int worth(Written written) {
        String number = written.text().replace("%", "").strip();
        if (number.matches("\\d{1,3}") && Integer.parseInt(number) <= MOST_WORTH) {
            return Integer.parseInt(number);
        }
        findings.accept(Doubt.error("worth-not-understood", "This is not a whole number of percent from 0 to 100.",
                "how much dearer it may be, such as 2 %", "Correct it."), written);
        return 0;
    }
}
