package slotledger.catalog.internal.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.board.Bank;
import slotledger.model.board.Banks;

/** Reads which sockets form a bank, or how many bits the board reads at once. */
final class BankReading {

    private static final List<String> KEYS = List.of("bus", "list");
    private static final int MOST_BITS = 1024;

    private final SlotReading slots;
    private final Map<String, String> bankOf = new HashMap<>();

    BankReading(SlotReading slots) {
        this.slots = slots;
    }

    /** A number alone is the width of the bus. */
    Optional<Banks> banks(Value value) {
        if (!value.isMapping()) {
            OptionalInt bits = value.number(1, MOST_BITS);
            return bits.isPresent() ? Optional.of(new Banks(List.of(), bits)) : Optional.empty();
        }
        return value.fields(KEYS).map(fields -> new Banks(
                fields.find("list").flatMap(list -> list.namedFields("0: [SIMM1, SIMM2]"))
                        .map(this::list)
                        .orElse(List.of()),
                fields.find("bus").map(bits -> bits.number(1, MOST_BITS)).orElse(OptionalInt.empty())));
    }

    private List<Bank> list(Fields fields) {
        List<Bank> banks = new ArrayList<>();
        for (Value value : fields.all()) {
            List<String> labels = new ArrayList<>();
            for (Value item : value.items()) {
                slots.labels(item).stream().filter(label -> isFirst(label, value.name(), item)).forEach(labels::add);
            }
            if (value.name().isEmpty()) {
                value.problem("A bank has no name.", "Write its name before the colon.");
            } else if (!labels.isEmpty()) {
                banks.add(new Bank(value.name(), labels));
            }
        }
        return banks;
    }

    private boolean isFirst(String label, String bank, Value item) {
        String other = bankOf.putIfAbsent(label, bank);
        if (other != null) {
            item.problem("The slot %s is in the bank %s already.".formatted(label, other),
                    "Keep it in the one bank the document names.");
        }
        return other == null;
    }
}
