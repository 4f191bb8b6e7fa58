package slotledger.intake.internal.choices;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import slotledger.intake.Known;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.ModuleReading;
import slotledger.intake.internal.value.ModuleText;
import slotledger.intake.internal.value.Written;
import slotledger.model.module.ModuleKind;
import slotledger.model.trade.Offer;

/** Finds the module kinds of a project that a text means: an offer's id or part number, or words of a label. */
final class KindSearch {

    private static final int MOST_NAMED = 4;

    private final List<Offer> offers;
    private final Set<ModuleKind> kinds = new LinkedHashSet<>();
    private final BiConsumer<Doubt, Written> findings;

    KindSearch(Known known, BiConsumer<Doubt, Written> findings) {
        this.findings = findings;
        offers = known.market().offers();
        offers.forEach(offer -> add(offer.piece()));
        known.shelf().pieces().keySet().forEach(this::add);
        known.fleet().machines().forEach(machine -> machine.population().modules().forEach(kinds::add));
    }

    private void add(Object piece) {
        if (piece instanceof ModuleKind kind) {
            kinds.add(kind);
        }
    }

    /** All kinds that are meant; none, with a finding, where there is none. */
    List<ModuleKind> all(Written written) {
        for (Offer offer : offers) {
            boolean isNamed = offer.id().equalsIgnoreCase(written.text().strip())
                    || offer.part().equalsIgnoreCase(written.text().strip());
            if (isNamed && offer.piece() instanceof ModuleKind kind) {
                return List.of(kind);
            }
        }
        ModuleReading reading = ModuleText.read(written.text(), Optional.empty());
        if (reading.facts().isEmpty() || !reading.rest().isEmpty() || reading.count() != 1) {
            findings.accept(Doubt.error("kind-not-understood",
                    "This is neither the part of an offer nor a module in words%s."
                            .formatted(reading.rest().isEmpty() || reading.facts().isEmpty() ? ""
                                    : "; \"%s\" was not understood".formatted(reading.rest())),
                    "one module such as \"8 GB DDR4-2400 SO-DIMM\", or an offer's part number", "Correct it."),
                    written);
            return List.of();
        }
        List<ModuleKind> meant = kinds.stream().filter(kind -> isMeant(kind, reading, written.text())).toList();
        if (meant.isEmpty()) {
            findings.accept(Doubt.error("kind-not-known",
                    "No such module is on offer, on the shelf or in a machine%s.".formatted(near(reading)),
                    "a module that is on offer, on the shelf or in a machine",
                    "Correct it; \"slotledger matrix\" lists the modules the project knows."), written);
        }
        return meant;
    }

    /** A description that names no capacity means modules of any. */
    private static boolean isMeant(ModuleKind kind, ModuleReading reading, String text) {
        ModuleReading whole = reading.facts().capacity().isPresent()
                ? reading : ModuleText.read(kind.capacity() + " " + text, Optional.empty());
        return whole.facts().kind(new ArrayList<>()).filter(kind::isDescribedBy).isPresent();
    }

    private String near(ModuleReading reading) {
        List<ModuleKind> near = kinds.stream()
                .filter(kind -> reading.facts().capacity().filter(kind.capacity()::equals).isPresent())
                .toList();
        return near.isEmpty() ? "" : "; of that size are known: " + named(near);
    }

    /** The one kind that is meant; empty, with a finding, where there is none or more than one. */
    Optional<ModuleKind> one(Written written) {
        List<ModuleKind> meant = all(written);
        if (meant.size() > 1) {
            findings.accept(Doubt.error("kind-not-clear",
                    "This can mean %d kinds: %s.".formatted(meant.size(), named(meant)), "words that mean one kind",
                    "Write more of what stands on the label, or an offer's part number."), written);
            return Optional.empty();
        }
        return meant.stream().findFirst();
    }

    private static String named(List<ModuleKind> kinds) {
        String names = kinds.stream().limit(MOST_NAMED).map(ModuleKind::toString).collect(Collectors.joining("; "));
        return kinds.size() > MOST_NAMED ? names + "; and " + (kinds.size() - MOST_NAMED) + " more" : names;
    }
}
