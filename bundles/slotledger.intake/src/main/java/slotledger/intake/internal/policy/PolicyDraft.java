package slotledger.intake.internal.policy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Written;
import slotledger.model.finding.Finding;
import slotledger.model.source.Place;

/** What a policy file says, sorted by key but not yet understood; the same for text files and spreadsheets. */
final class PolicyDraft {

    /** One target. */
    record TargetDraft(Map<PolicyKey, Written> entries, Place place) {}

    /** One wave, with what single cost centres may spend in it. */
    record WaveDraft(Map<PolicyKey, Written> entries, Map<String, Written> costCentres, Place place) {}

    final Map<PolicyKey, Written> settings = new EnumMap<>(PolicyKey.class);
    final List<TargetDraft> targets = new ArrayList<>();
    final Map<String, Written> costCentres = new LinkedHashMap<>();
    final Map<String, Written> rates = new LinkedHashMap<>();
    final List<WaveDraft> waves = new ArrayList<>();
    final Map<PolicyKey, List<Written>> leaveAlone = new EnumMap<>(PolicyKey.class);

    private final Consumer<Finding> findings;

    PolicyDraft(Consumer<Finding> findings) {
        this.findings = findings;
    }

    void set(PolicyKey key, Written entry) {
        Written before = settings.putIfAbsent(key, entry);
        if (before != null) {
            twice(key.text(), before, entry);
        }
    }

    void costCentre(String name, Written entry) {
        Written before = costCentres.putIfAbsent(name, entry);
        if (before != null) {
            twice("the budget of " + name, before, entry);
        }
    }

    void rate(String currency, Written entry) {
        Written before = rates.putIfAbsent(currency, entry);
        if (before != null) {
            twice("the rate of " + currency, before, entry);
        }
    }

    void leave(PolicyKey kind, Written entry) {
        leaveAlone.computeIfAbsent(kind, key -> new ArrayList<>()).add(entry);
    }

    void report(Doubt doubt, Written entry) {
        findings.accept(doubt.at(entry.place(), entry.text()));
    }

    void report(Doubt doubt, Place place, String seen) {
        findings.accept(doubt.at(place, seen));
    }

    private void twice(String what, Written before, Written entry) {
        report(Doubt.error("key-twice", "%s stands already at %s; the first counts.".formatted(what, before.place()),
                "every key once", "Delete one of them."), entry);
    }
}
