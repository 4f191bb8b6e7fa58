package slotledger.intake.internal.policy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.policy.PolicyDraft.TargetDraft;
import slotledger.intake.internal.value.Currencies;
import slotledger.intake.internal.value.DecimalMark;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.ModuleReading;
import slotledger.intake.internal.value.ModuleText;
import slotledger.intake.internal.value.NumberText;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Words;
import slotledger.intake.internal.value.Written;
import slotledger.model.source.Place;
import slotledger.model.trade.Buying;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Target;
import slotledger.model.trade.Tax;
import slotledger.model.trade.Wave;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;
import slotledger.model.unit.Rate;

/** Makes a policy of a draft; what can't be understood becomes a finding and keeps its default. */
final class PolicyBuilder {

    private static final int MOST_WEIGHT = 1000;

    private final String file;
    private final PolicyDraft draft;
    private final Currency currency;

    PolicyBuilder(String file, PolicyDraft draft) throws IntakeException {
        this.file = file;
        this.draft = draft;
        this.currency = currency();
    }

    private Currency currency() throws IntakeException {
        Written written = draft.settings.get(PolicyKey.CURRENCY);
        Written budget = draft.settings.get(PolicyKey.BUDGET);
        Optional<Currency> found = written != null ? Currencies.in(written.text())
                : budget != null ? Currencies.in(budget.text()) : Optional.empty();
        if (found.isEmpty()) {
            Place place = written == null ? Place.ofFile(file) : written.place();
            throw new IntakeException(Doubt.error("currency-missing",
                    "The policy does not say which currency it is in.",
                    "a line such as \"currency: EUR\"", "Add the line; use the three letters of ISO 4217.")
                    .at(place, written == null ? "" : written.text()), null);
        }
        return found.get();
    }

    Policy build() {
        Map<String, Money> costCentres = new LinkedHashMap<>();
        draft.costCentres.forEach((name, entry) -> money(entry).ifPresent(amount -> costCentres.put(name, amount)));
        return new Policy(currency, targets(), setting(PolicyKey.BUDGET).flatMap(this::money), costCentres,
                setting(PolicyKey.PER_MACHINE).flatMap(this::money).orElse(Money.zero(currency)),
                setting(PolicyKey.PER_MODULE).flatMap(this::money).orElse(Money.zero(currency)),
                setting(PolicyKey.SPARES_PERCENT).map(this::percent).orElse(0),
                decision(PolicyKey.SPARES_AT_LEAST_ONE, false), decision(PolicyKey.REUSE_PULLED, true),
                decision(PolicyKey.HARVEST, false),
                new Policy.LeaveAlone(texts(PolicyKey.TAGS), texts(PolicyKey.ROOMS), texts(PolicyKey.ROLES)),
                buying(), waves());
    }

    private Buying buying() {
        BuyingBuilder builder = new BuyingBuilder(draft, currency);
        return new Buying(setting(PolicyKey.NEEDED_BY).flatMap(builder::date),
                builder.rates(setting(PolicyKey.RATES_OF).flatMap(builder::date)),
                new Tax(setting(PolicyKey.TAX_PERCENT).flatMap(builder::tax),
                        decision(PolicyKey.BUDGET_INCLUDES_TAX, false)),
                setting(PolicyKey.PRICES_AFTER_VALIDITY).map(builder::keeps).orElse(false));
    }

    private List<Wave> waves() {
        return new BuyingBuilder(draft, currency).waves(this::money, setting(PolicyKey.NEEDED_BY));
    }

    private Optional<Written> setting(PolicyKey key) {
        return Optional.ofNullable(draft.settings.get(key)).filter(entry -> !entry.text().isBlank());
    }

    private Set<String> texts(PolicyKey kind) {
        Set<String> texts = new LinkedHashSet<>();
        draft.leaveAlone.getOrDefault(kind, List.of()).forEach(entry -> texts.add(Texts.tidy(entry.text())));
        texts.remove("");
        return texts;
    }

    /** A yes or no; where the file doesn't say, the default is used and said. */
    private boolean decision(PolicyKey key, boolean otherwise) {
        Optional<Written> entry = setting(key);
        if (entry.isEmpty()) {
            if (key == PolicyKey.REUSE_PULLED || key == PolicyKey.HARVEST) {
                draft.report(Doubt.note("default-used", "\"%s\" is not given; %s was assumed."
                        .formatted(key.text(), otherwise ? "yes" : "no"), "yes or no", "Write it down if it matters."),
                        Place.ofFile(file), "");
            }
            return otherwise;
        }
        return yesOrNo(entry.get(), otherwise);
    }

    private boolean yesOrNo(Written entry, boolean otherwise) {
        Optional<Boolean> decided = Words.decide(entry.text());
        if (decided.isEmpty()) {
            draft.report(Doubt.error("not-yes-or-no", "This is neither yes nor no; %s was assumed."
                    .formatted(otherwise ? "yes" : "no"), "yes or no", "Correct it."), entry);
        }
        return decided.orElse(otherwise);
    }

    private int percent(Written entry) {
        OptionalInt number = whole(entry.text().replace("%", "").strip(), 100);
        if (number.isEmpty()) {
            draft.report(Doubt.error("not-a-percentage", "This is not a whole number from 0 to 100; 0 was used.",
                    "a percentage such as 2", "Correct it."), entry);
        }
        return number.orElse(0);
    }

    private static OptionalInt whole(String text, int most) {
        return text.matches("\\d{1,6}") && Integer.parseInt(text) <= most
                ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
    }

    private Optional<Money> money(Written entry) {
        Optional<Currency> named = Currencies.in(entry.text());
        NumberText number = NumberText.read(Currencies.without(entry.text()), DecimalMark.UNKNOWN);
        boolean other = named.isPresent() && !named.get().equals(currency);
        if (number.value().isEmpty() || number.value().get().signum() < 0 || other
                || number.value().get().precision() - number.value().get().scale() > 12) {
            draft.report(Doubt.error(number.ambiguous() ? "amount-ambiguous" : "amount-not-understood",
                    number.ambiguous()
                    ? "This can be read in two ways; it was not used."
                    : other ? "This is not in the currency of the policy (%s); it was not used."
                            .formatted(currency.getCurrencyCode())
                            : "This is not an amount of money; it was not used.",
                    "an amount such as 12000 or 12000.00", "Correct it."), entry);
            return Optional.empty();
        }
        BigDecimal amount = number.value().get().setScale(currency.getDefaultFractionDigits(), RoundingMode.HALF_UP);
        return Optional.of(Money.of(amount, currency));
    }

    private List<Target> targets() {
        List<Target> targets = new ArrayList<>();
        Set<String> roles = new HashSet<>();
        for (TargetDraft target : draft.targets) {
            Written role = target.entries().get(PolicyKey.ROLE);
            Written memory = target.entries().get(PolicyKey.MEMORY);
            if (role == null || role.text().isBlank() || memory == null) {
                draft.report(Doubt.error("target-incomplete", "A target needs a role and a memory; it was left out.",
                        "role and memory", "Complete it; the role * stands for any role."), target.place(), "");
                continue;
            }
            Optional<Capacity> capacity = capacity(memory);
            if (capacity.isPresent() && !roles.add(Texts.tidy(role.text()).toLowerCase(Locale.ROOT))) {
                draft.report(Doubt.error("target-twice", "This role has a target already; the first counts.",
                        "one target a role", "Delete one of them."), role);
            } else if (capacity.isPresent()) {
                targets.add(target(target, Texts.tidy(role.text()), capacity.get()));
            }
        }
        if (targets.isEmpty()) {
            draft.report(Doubt.error("no-targets", "The policy has no target, so no machine is to be changed.",
                    "at least one target", "Add a target for a role, or for any role (*)."), Place.ofFile(file), "");
        }
        return targets;
    }

    private Target target(TargetDraft target, String role, Capacity capacity) {
        return new Target(role, capacity,
                given(target, PolicyKey.DUAL_CHANNEL).map(entry -> yesOrNo(entry, false)).orElse(false),
                given(target, PolicyKey.ECC).map(entry -> yesOrNo(entry, false)).orElse(false),
                given(target, PolicyKey.RATE).flatMap(this::rate),
                given(target, PolicyKey.WEIGHT).map(this::weight).orElse(1));
    }

    private static Optional<Written> given(TargetDraft target, PolicyKey key) {
        return Optional.ofNullable(target.entries().get(key)).filter(entry -> !Words.sayNothing(entry.text()));
    }

    private Optional<Capacity> capacity(Written entry) {
        ModuleReading reading = ModuleText.read(entry.text(), Optional.empty());
        boolean understood = reading.rest().isEmpty() && reading.count() == 1
                && reading.facts().capacity().filter(known -> !known.isNone()).isPresent();
        if (!understood) {
            draft.report(Doubt.error("memory-not-understood", "This is not a capacity; the target was left out.",
                    "a capacity such as 16 GB", "Correct it."), entry);
            return Optional.empty();
        }
        reading.doubts().forEach(doubt -> draft.report(doubt, entry));
        return reading.facts().capacity();
    }

    private Optional<Rate> rate(Written entry) {
        OptionalInt number = whole(entry.text().replaceAll("(?i)\\s*(mt/s|mhz)$", ""), 20_000);
        if (number.isEmpty() || number.getAsInt() < 1) {
            draft.report(Doubt.error("rate-not-understood", "This is not a rate; it was not used.",
                    "a rate in MT/s such as 2400",
                    "Correct it."), entry);
            return Optional.empty();
        }
        return Optional.of(Rate.of(number.getAsInt()));
    }

    private int weight(Written entry) {
        OptionalInt number = whole(entry.text(), MOST_WEIGHT);
        if (number.isEmpty() || number.getAsInt() < 1) {
            draft.report(Doubt.error("weight-not-understood", "This is not a whole number from 1 to 1000; 1 was used.",
                    "a weight such as 3", "Correct it."), entry);
            return 1;
        }
        return number.getAsInt();
    }
}
