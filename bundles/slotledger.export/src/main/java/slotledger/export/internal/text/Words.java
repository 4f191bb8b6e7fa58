package slotledger.export.internal.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slotledger.export.PlanBook;
import slotledger.model.board.BoardFact;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Station;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Target;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;

/** Sentences and names that several files share, so that they say the same. */
public final class Words {

    private Words() {
    }

    /** See {@link ModuleKind#brief()}. */
    public static String brief(ModuleKind kind) {
        return kind.brief();
    }

    public static String brief(Piece piece) {
        return brief(SlotContent.of(piece));
    }

    public static String brief(SlotContent content) {
        return content.module().map(Words::brief).orElseGet(content::toString);
    }

    /** The same in the room that a slot of a picture has; which filler goes there, the other texts say. */
    public static String inSlot(SlotContent content) {
        if (content instanceof SlotContent.Filled filled) {
            return switch (filled.filler()) {
                case CONTINUITY_184, CONTINUITY_232 -> "continuity module";
                case AIR_BLANK -> filled.filler().text();
            };
        }
        return brief(content);
    }

    /** Where something is or goes: "order from S, part P", "shelf", "machine X, slot Y", "disposal". */
    public static String station(Station station, PlanBook book) {
        if (station instanceof Station.InSlot slot) {
            return "machine " + slot.machine() + ", slot " + slot.slot();
        }
        if (station instanceof Station.FromOrder order) {
            return offer(order.offer(), book)
                    .map(offer -> "order from " + offer.supplier() + ", part " + offer.part())
                    .orElse("order " + order.offer());
        }
        return station instanceof Station.OnShelf ? "shelf" : "disposal";
    }

    public static Optional<Offer> offer(String id, PlanBook book) {
        return book.plan().purchases().stream()
                .map(Purchase::offer)
                .filter(offer -> offer.id().equals(id))
                .findFirst()
                .or(() -> book.market().offers().stream().filter(offer -> offer.id().equals(id)).findFirst());
    }

    /** "16 GB, all channels together, ECC, at least 2400 MT/s". */
    public static String target(Optional<Target> target) {
        return target.map(wanted -> {
            StringBuilder line = new StringBuilder(wanted.capacity().toString());
            line.append(wanted.sameChannels() ? ", all channels together" : "");
            line.append(wanted.ecc() ? ", ECC" : "");
            wanted.rate().ifPresent(rate -> line.append(", at least ").append(rate));
            return line.toString();
        }).orElse("none");
    }

    /** "64 GB (32 GB usable)". */
    public static String memory(Operation operation) {
        return operation.usable().equals(operation.installed())
                ? operation.installed().toString()
                : operation.installed() + " (" + operation.usable() + " usable)";
    }

    /** "an airflow blank". */
    public static String one(String thing) {
        return ("aeiou".indexOf(thing.charAt(0)) < 0 ? "a " : "an ") + thing;
    }

    /** "16 GB, dual channel, 2666 MT/s". */
    public static String operation(Operation operation) {
        StringBuilder line = new StringBuilder(memory(operation));
        line.append(", ").append(operation.mode());
        line.append(", ").append(operation.rate().map(Object::toString).orElse("rate not known"));
        return line.append(operation.ecc() ? ", ECC" : "").toString();
    }

    /** "16 GB (16384 MB)": firmware prints one or the other. */
    public static String bothUnits(Capacity capacity) {
        return capacity.kibibytes() >= 1024 * 1024 && capacity.kibibytes() % 1024 == 0
                ? capacity + " (" + capacity.mebibytes() + " MB)"
                : capacity.toString();
    }

    public static long onTargetBefore(Plan plan) {
        return plan.count(Outcome.ON_TARGET) + plan.count(Outcome.DONOR);
    }

    public static long onTargetAfter(Plan plan) {
        return onTargetBefore(plan) + plan.count(Outcome.REACHES_TARGET);
    }

    /** How far from the best plan this one can be, as sentences. */
    public static List<String> optimality(Optimality proof) {
        List<String> lines = new ArrayList<>();
        if (proof.weightBound() == proof.weightOnTarget()) {
            lines.add(("Proven: no plan within the budget brings more machines to their targets, each machine "
                    + "counted with the weight of its role in the policy (in all %d).")
                    .formatted(proof.weightOnTarget()));
        } else {
            lines.add(("Not proven best: the machines this plan brings to their targets, each counted with the "
                    + "weight of its role in the policy, make %d; the most any plan could bring is %d.")
                    .formatted(proof.weightOnTarget(), proof.weightBound()));
        }
        if (proof.costBound().equals(proof.cost())) {
            lines.add("Proven: no plan that brings as many costs less than %s for goods, delivery and labour."
                    .formatted(proof.cost()));
        } else {
            BigDecimal percent = proof.costGap().movePointRight(2).setScale(2, RoundingMode.UP);
            lines.add("This plan costs %s for goods, delivery and labour; one that does as much can't cost less than "
                    .formatted(proof.cost()) + proof.costBound()
                    + ", so at most %s %% could be saved.".formatted(percent.toPlainString()));
        }
        if (proof.cut()) {
            lines.add("The search was stopped early on request; a better plan may exist within these bounds.");
        }
        if (!proof.limits().isEmpty()) {
            lines.add("What this was searched and proven among:");
        }
        proof.limits().forEach(limit -> lines.add("• " + limit));
        lines.add("Found by: " + proof.solver() + ".");
        return List.copyOf(lines);
    }

    /** Why a machine isn't on target, with the reasons of the rules and their sources. */
    public static String obstacle(Obstacle obstacle) {
        StringBuilder text = new StringBuilder(obstacle.message());
        for (Reason reason : obstacle.reasons()) {
            if (text.indexOf(reason.sentence()) < 0) {
                text.append(' ').append(reason.sentence());
            }
            String source = reason.source().toString();
            text.append(source.isEmpty() ? "" : " [" + source + "]");
        }
        return text.toString();
    }

    /** "fill order", as a sheet names a fact. */
    public static String fact(BoardFact fact) {
        return fact.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
