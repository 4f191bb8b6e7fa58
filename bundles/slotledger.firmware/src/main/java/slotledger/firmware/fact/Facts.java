package slotledger.firmware.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one structure or module tells, in the order in which it tells it.
 *
 * @param all one entry a fact; a fact that is not there was not told at all
 */
public record Facts(List<Told<?>> all) {

    public Facts {
        all = List.copyOf(all);
    }

    /** The value; empty both where it is unknown and where nothing was told. */
    public <T> Optional<T> get(Fact<T> fact) {
        for (Told<?> told : all) {
            if (told.fact().equals(fact)) {
                return told.value().map(fact.type()::cast);
            }
        }
        return Optional.empty();
    }

    /** What stands there; empty where nothing was told. */
    public Optional<String> raw(Fact<?> fact) {
        return all.stream().filter(told -> told.fact().equals(fact)).map(Told::raw).findFirst();
    }

    /** Whether the fact was told, be it as unknown. */
    public boolean tells(Fact<?> fact) {
        return raw(fact).isPresent();
    }

    /** Collects facts. */
    public static final class Builder {

        private final List<Told<?>> all = new ArrayList<>();

        public <T> Builder known(Fact<T> fact, String raw, T value) {
            return told(fact, raw, Optional.of(value));
        }

        public <T> Builder unknown(Fact<T> fact, String raw) {
            return told(fact, raw, Optional.empty());
        }

        /** The first word on a fact counts; a list that names it again adds nothing. */
        public <T> Builder told(Fact<T> fact, String raw, Optional<T> value) {
            if (all.stream().noneMatch(one -> one.fact().equals(fact))) {
                all.add(new Told<>(fact, raw, value));
            }
            return this;
        }

        public <T> Optional<T> get(Fact<T> fact) {
            return build().get(fact);
        }

        public Facts build() {
            return new Facts(all);
        }
    }
}
