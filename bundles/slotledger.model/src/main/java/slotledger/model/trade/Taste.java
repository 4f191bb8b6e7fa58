package slotledger.model.trade;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.source.Place;

/**
 * Something people don't want, or would rather have.
 *
 * <p>A forbidden kind is put into no machine, wherever it comes from; modules of it that are in a machine may stay. A
 * forbidden supplier or maker is not bought of. A preference speaks of what is bought only: of two plans with equal
 * targets and money the one is taken that buys fewer modules nobody prefers; and where the preference has a worth, each
 * preferred pack counts as so many percent of its price for one pack cheaper, rounded down to whole minor units.
 *
 * @param attitude     how they stand to it
 * @param about        what is spoken of
 * @param name         a kind in the words of its label or an offer's part, the name of a supplier, or that of a maker
 * @param kinds        the kinds the name stands for, where kinds are spoken of
 * @param worthPercent how much dearer a preferred pack may be, in percent, 0 to 100; 0 where something is forbidden
 * @param place        where it was decided
 */
public record Taste(
        Attitude attitude, About about, String name, List<ModuleKind> kinds, int worthPercent, Place place) {

    /** How people stand to something. */
    public enum Attitude { FORBID, PREFER }

    /** What is spoken of. */
    public enum About { KIND, SUPPLIER, MAKER }

    private static final int MOST_WORTH = 100;

    public Taste {
        Objects.requireNonNull(attitude, "attitude");
        Objects.requireNonNull(about, "about");
        kinds = List.copyOf(kinds);
        Objects.requireNonNull(place, "place");
        if (name.isBlank()) {
            throw new IllegalArgumentException("The name of what is forbidden or preferred must not be blank.");
        }
        if (worthPercent < 0 || worthPercent > MOST_WORTH || attitude == Attitude.FORBID && worthPercent != 0) {
            throw new IllegalArgumentException(
                    "The worth (%d %%) of a preference must be from 0 to 100, and 0 of what is forbidden."
                            .formatted(worthPercent));
        }
        if (about != About.KIND && !kinds.isEmpty()) {
            throw new IllegalArgumentException("A supplier or maker (%s) must not stand for kinds.".formatted(name));
        }
    }

    /** Whether an offer is spoken of. */
    public boolean covers(Offer offer) {
        return switch (about) {
            case KIND -> covers(offer.piece());
            case SUPPLIER -> same(name, offer.supplier());
            case MAKER -> offer.maker().filter(maker -> same(name, maker)).isPresent();
        };
    }

    /** Whether a kind is spoken of, whoever sells it. */
    public boolean covers(Piece piece) {
        return about == About.KIND && piece instanceof ModuleKind kind && kinds.contains(kind);
    }

    private static boolean same(String one, String other) {
        return key(one).equals(key(other));
    }

    private static String key(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    /** "no supplier Alder", "rather maker Orvane, worth 2 %". */
    @Override
    public String toString() {
        String what = about.name().toLowerCase(Locale.ROOT) + " " + name;
        return attitude == Attitude.FORBID ? "no " + what
                : "rather " + what + (worthPercent == 0 ? "" : ", worth " + worthPercent + " %");
    }
}
