package slotledger.model.board;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ContactMetal;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/**
 * One way of filling slots that the board's document allows. A board has several where one limit hangs on another
 * ("with the faster grade the largest module is half as big"); then all modules of a population follow the same one.
 * An empty set or optional means the document is silent.
 *
 * @param slots            labels of the slots this holds for; empty means all
 * @param generation       memory technology
 * @param forms            mechanical forms that go in
 * @param bufferings       bufferings that work; never mixed
 * @param ecc              what becomes of ECC modules
 * @param voltages         voltages the slots supply
 * @param rates            module grades allowed by this way; empty means any
 * @param smallestModule   smallest module allowed
 * @param largestModule    largest module allowed in one slot
 * @param chipWidths       chip widths that work
 * @param smallestChip     smallest chip that works
 * @param largestChip      largest chip the controller knows
 * @param moduleRanks      most ranks of one module
 * @param channelRanks     most ranks in one channel
 * @param tallestStack     most dies stacked in a chip; 1 means none may be stacked
 * @param slowest          slowest access time allowed
 * @param contacts         metal of the sockets' contacts
 */
public record Takes(
        Set<String> slots,
        Generation generation,
        Set<Form> forms,
        Set<Buffering> bufferings,
        EccOutcome ecc,
        Set<Voltage> voltages,
        Set<Rate> rates,
        Optional<Capacity> smallestModule,
        Optional<Capacity> largestModule,
        Set<ChipWidth> chipWidths,
        Optional<ChipSize> smallestChip,
        Optional<ChipSize> largestChip,
        OptionalInt moduleRanks,
        OptionalInt channelRanks,
        OptionalInt tallestStack,
        Optional<AccessTime> slowest,
        Optional<ContactMetal> contacts) {

    public Takes {
        slots = Set.copyOf(slots);
        Objects.requireNonNull(generation, "generation");
        forms = Set.copyOf(forms);
        bufferings = Set.copyOf(bufferings);
        Objects.requireNonNull(ecc, "ecc");
        voltages = Set.copyOf(voltages);
        rates = Set.copyOf(rates);
        Objects.requireNonNull(smallestModule, "smallestModule");
        Objects.requireNonNull(largestModule, "largestModule");
        chipWidths = Set.copyOf(chipWidths);
        Objects.requireNonNull(smallestChip, "smallestChip");
        Objects.requireNonNull(largestChip, "largestChip");
        Objects.requireNonNull(moduleRanks, "moduleRanks");
        Objects.requireNonNull(channelRanks, "channelRanks");
        Objects.requireNonNull(tallestStack, "tallestStack");
        Objects.requireNonNull(slowest, "slowest");
        Objects.requireNonNull(contacts, "contacts");
        if (forms.isEmpty()) {
            throw new IllegalArgumentException("The forms a board takes must name at least one.");
        }
    }

    /** Whether this way of filling speaks of the slot. */
    public boolean holdsFor(String slotLabel) {
        return slots.isEmpty() || slots.contains(slotLabel);
    }
}
