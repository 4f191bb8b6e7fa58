package slotledger.intake.internal.policy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.intake.internal.value.Nearest;
import slotledger.intake.internal.value.Texts;

/** The keys of a policy, as they are written; case, blanks and hyphens don't matter. */
enum PolicyKey {
    CURRENCY(Section.SETTINGS, "currency", "Währung", "devise", "moneda", "valuta", "waluta"),
    BUDGET(Section.SETTINGS, "budget", "budget in all", "total budget"),
    PER_MACHINE(Section.SETTINGS, "labour per machine", "labor per machine"),
    PER_MODULE(Section.SETTINGS, "labour per module", "labor per module"),
    SPARES_PERCENT(Section.SETTINGS, "spares percent", "spares in percent", "spare percent", "spares"),
    SPARES_AT_LEAST_ONE(Section.SETTINGS, "spares at least one", "at least one spare"),
    REUSE_PULLED(Section.SETTINGS, "reuse pulled", "reuse pulled modules"),
    HARVEST(Section.SETTINGS, "harvest"),
    NEEDED_BY(Section.SETTINGS, "needed by", "arrival by"),
    TAX_PERCENT(Section.SETTINGS, "tax percent", "tax in percent", "tax", "VAT percent", "VAT"),
    BUDGET_INCLUDES_TAX(Section.SETTINGS, "budget includes tax", "budgets include tax"),
    PRICES_AFTER_VALIDITY(Section.SETTINGS, "prices after validity"),
    RATES_OF(Section.SETTINGS, "exchange rates of", "rates of"),

    ROLE(Section.TARGETS, "role"),
    MEMORY(Section.TARGETS, "memory", "capacity", "ram", "target memory"),
    DUAL_CHANNEL(Section.TARGETS, "dual channel", "all channels", "same channels"),
    ECC(Section.TARGETS, "ecc"),
    RATE(Section.TARGETS, "rate", "speed", "least rate"),
    WEIGHT(Section.TARGETS, "weight", "priority"),

    WAVE_NAME(Section.WAVES, "name", "wave"),
    WAVE_DATE(Section.WAVES, "date", "day"),
    WAVE_BUDGET(Section.WAVES, "budget"),
    WAVE_NEEDED_BY(Section.WAVES, "needed by", "arrival by"),

    TAGS(Section.LEAVE_ALONE, "tags", "tag", "asset tags", "asset tag", "machines", "machine"),
    ROOMS(Section.LEAVE_ALONE, "rooms", "room"),
    ROLES(Section.LEAVE_ALONE, "roles", "role");

    /** The parts of a policy. */
    enum Section {
        SETTINGS("settings"),
        TARGETS("targets", "target"),
        COST_CENTRES("cost centre budgets", "cost center budgets", "cost centres", "cost centers",
                "cost centre budget"),
        LEAVE_ALONE("leave alone"),
        RATES("exchange rates", "exchange rate"),
        WAVES("waves"),
        LABOUR("labour", "labor"),
        SPARES("spares");

        private final List<String> names;

        Section(String... names) {
            this.names = List.of(names);
        }

        String text() {
            return names.get(0);
        }

        static Optional<Section> of(String text) {
            for (Section section : values()) {
                if (section.names.stream().anyMatch(name -> Texts.key(name).equals(Texts.key(text)))) {
                    return Optional.of(section);
                }
            }
            return Optional.empty();
        }
    }

    private final Section section;
    private final List<String> names;

    PolicyKey(Section section, String... names) {
        this.section = section;
        this.names = List.of(names);
    }

    String text() {
        return names.get(0);
    }

    static Optional<PolicyKey> of(Section section, String text) {
        for (PolicyKey key : values()) {
            if (key.section == section && key.names.stream()
                    .anyMatch(name -> Texts.key(name).equals(Texts.key(text)))) {
                return Optional.of(key);
            }
        }
        return Optional.empty();
    }

    /** What to do about a key nobody knows. */
    static String advice(Section section, String written) {
        List<String> known = new ArrayList<>();
        for (PolicyKey key : values()) {
            if (key.section == section) {
                known.add(key.text());
            }
        }
        if (section == Section.SETTINGS) {
            for (Section part : Section.values()) {
                known.add(part.text());
            }
        }
        return Nearest.to(written, known).map("Maybe \"%s\" is meant."::formatted)
                .orElse("Known here: " + String.join(", ", known) + ".");
    }
}
