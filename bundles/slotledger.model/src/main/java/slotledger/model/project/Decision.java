package slotledger.model.project;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import slotledger.model.machine.AssetTag;

/** What a person decided about a machine or a finding. It survives every import of the same machines. */
public sealed interface Decision {

    /** What it is about; a later decision about the same takes the place of an earlier one. */
    String subject();

    /** What somebody else must not change at the same time: the machine, or the subject where it is about none. */
    String thing();

    /**
     * The inventory is wrong.
     *
     * @param machine which machine
     * @param fact    what is wrong
     * @param seen    what the inventory said then
     * @param value   what is right
     */
    record Correction(AssetTag machine, Fact fact, String seen, String value) implements Decision {
        public Correction {
            Objects.requireNonNull(machine, "machine");
            Objects.requireNonNull(fact, "fact");
            Objects.requireNonNull(seen, "seen");
            value = value.strip();
        }

        @Override
        public String subject() {
            return "correction " + machine + " " + fact.id();
        }

        @Override
        public String thing() {
            return "machine " + machine;
        }
    }

    /**
     * A finding was looked at and is no trouble, as long as the same is seen.
     *
     * @param code    which check
     * @param machine the machine the finding is about, or "" where it is about none
     * @param seen    the text the finding is about
     */
    record Mute(String code, String machine, String seen) implements Decision {
        public Mute {
            Objects.requireNonNull(code, "code");
            Objects.requireNonNull(machine, "machine");
            Objects.requireNonNull(seen, "seen");
        }

        @Override
        public String subject() {
            return "mute " + code + " " + machine + (machine.isEmpty() ? " " + seen : "");
        }

        @Override
        public String thing() {
            return machine.isEmpty() ? subject() : "machine " + machine;
        }
    }

    /**
     * What a machine must end with.
     *
     * @param machine which machine
     * @param slots   label to content, in the words of a choices file; none means that it stays as it is
     * @param seen    what the slots held when it was decided, as the inventory was understood
     */
    record Pinned(AssetTag machine, Map<String, String> slots, String seen) implements Decision {
        public Pinned {
            Objects.requireNonNull(machine, "machine");
            slots = Collections.unmodifiableMap(new LinkedHashMap<>(slots));
            Objects.requireNonNull(seen, "seen");
        }

        @Override
        public String subject() {
            return "pin " + machine;
        }

        @Override
        public String thing() {
            return "machine " + machine;
        }
    }
}
