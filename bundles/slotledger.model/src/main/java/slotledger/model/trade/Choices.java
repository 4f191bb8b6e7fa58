package slotledger.model.trade;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.module.Piece;
import slotledger.model.trade.Taste.Attitude;

/**
 * What people decided before a plan is made; the planner keeps to it.
 *
 * @param pins       machines and what each of them must end with
 * @param tastes     what is forbidden or preferred
 * @param uniform    rooms whose machines of one board all get the same modules; "site / room" or the room alone, texts
 *                   as the inventory writes them, without regard to case
 * @param mostOpened most machines somebody opens; empty means no limit
 */
public record Choices(List<Pin> pins, List<Taste> tastes, Set<String> uniform, OptionalInt mostOpened) {

    /** Nobody decided anything. */
    public static final Choices NONE = new Choices(List.of(), List.of(), Set.of(), OptionalInt.empty());

    public Choices {
        pins = List.copyOf(pins);
        tastes = List.copyOf(tastes);
        uniform = uniform.stream().map(Choices::key).collect(Collectors.toUnmodifiableSet());
        Objects.requireNonNull(mostOpened, "mostOpened");
        if (pins.stream().map(Pin::machine).distinct().count() != pins.size()) {
            throw new IllegalArgumentException("A machine must not have two pins.");
        }
        if (mostOpened.isPresent() && mostOpened.getAsInt() < 0) {
            throw new IllegalArgumentException(
                    "The most machines to open (%d) must be at least 0.".formatted(mostOpened.getAsInt()));
        }
    }

    public boolean isEmpty() {
        return equals(NONE);
    }

    public Optional<Pin> pin(AssetTag machine) {
        return pins.stream().filter(pin -> pin.machine().equals(machine)).findFirst();
    }

    /** Why an offer must not be used; empty where it may. */
    public Optional<Taste> forbids(Offer offer) {
        return tastes.stream().filter(taste -> taste.attitude() == Attitude.FORBID && taste.covers(offer)).findFirst();
    }

    /** Whether nothing of the kind may be put into a machine. */
    public boolean forbids(Piece piece) {
        return tastes.stream().anyMatch(taste -> taste.attitude() == Attitude.FORBID && taste.covers(piece));
    }

    public boolean prefers(Offer offer) {
        return tastes.stream().anyMatch(taste -> taste.attitude() == Attitude.PREFER && taste.covers(offer));
    }

    /** How much dearer a pack of the offer may be, in percent: the largest worth of the preferences that cover it. */
    public int worthPercent(Offer offer) {
        return tastes.stream().filter(taste -> taste.attitude() == Attitude.PREFER && taste.covers(offer))
                .mapToInt(Taste::worthPercent).max().orElse(0);
    }

    /** The room that is kept uniform and in which the machine stands, as written in lower case; mostly empty. */
    public Optional<String> uniformRoom(Machine machine) {
        return uniform.contains(key(machine.where().toString())) || uniform.contains(key(machine.where().room()))
                ? Optional.of(key(machine.where().toString())) : Optional.empty();
    }

    private static String key(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
