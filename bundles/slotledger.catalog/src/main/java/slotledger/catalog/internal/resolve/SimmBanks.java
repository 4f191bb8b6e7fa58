package slotledger.catalog.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.Takes;
import slotledger.model.family.Families;
import slotledger.model.module.Form;
import slotledger.model.unit.Capacity;

/**
 * Splits a total over the banks of a board for SIMMs. There a total says more than elsewhere: banks are whole or empty,
 * they are filled in order, and the modules of a bank are alike.
 *
 * @param form  the only form the board takes
 * @param banks sockets of each bank, first to be filled first
 */
record SimmBanks(Form form, List<List<String>> banks) {

    /** 256 KB, 1, 4, 16 MB: one more address line, used for row and column, makes four times as much. */
    private static final Capacity SMALLEST_30 = Capacity.ofKiB(256);
    private static final int STEP_30 = 4;
    private static final Capacity LARGEST_30 = Capacity.ofMiB(16);
    /** 1, 2, 4 up to 64 MB; a second rank makes twice as much. */
    private static final Capacity SMALLEST_72 = Capacity.ofMiB(1);
    private static final int STEP_72 = 2;
    private static final Capacity LARGEST_72 = Capacity.ofMiB(64);

    /**
     * Equal modules in whole banks.
     *
     * @param sockets the sockets that are filled
     * @param each    capacity of each module
     */
    record Split(List<String> sockets, Capacity each) {
    }

    SimmBanks {
        banks = banks.stream().map(List::copyOf).toList();
    }

    /** The banks of a board for SIMMs of one form; empty for other boards, and where the banks aren't known. */
    static Optional<SimmBanks> of(Board board, List<String> usable) {
        Set<Form> forms = board.takes().stream().flatMap(way -> way.forms().stream()).collect(Collectors.toSet());
        if (!forms.equals(Set.of(Form.SIMM_30)) && !forms.equals(Set.of(Form.SIMM_72))) {
            return Optional.empty();
        }
        Form form = forms.iterator().next();
        List<List<String>> banks = board.banks().isEmpty()
                ? chunks(board, usable, form)
                : board.banks().list().stream().map(Bank::slots).filter(usable::containsAll).toList();
        return banks.isEmpty() ? Optional.empty() : Optional.of(new SimmBanks(form, banks));
    }

    /** Modules per bank = bits of the bus / bits of a module. */
    private static List<List<String>> chunks(Board board, List<String> usable, Form form) {
        OptionalInt bus = board.banks().busBits();
        OptionalInt bits = Families.dataBits(board.takes().get(0).generation(), form);
        if (bus.isEmpty() || bits.isEmpty() || bus.getAsInt() % bits.getAsInt() != 0) {
            return List.of();
        }
        Set<String> order = new LinkedHashSet<>(board.fill().order());
        order.addAll(usable);
        List<String> sockets = order.stream().filter(usable::contains).toList();
        int size = bus.getAsInt() / bits.getAsInt();
        List<List<String>> banks = new ArrayList<>();
        for (int from = 0; from + size <= sockets.size(); from += size) {
            banks.add(sockets.subList(from, from + size));
        }
        return banks;
    }

    /** The fewest equal modules of a usual size that give the total in whole banks, filled in order. */
    Optional<Split> split(Capacity total, List<Takes> ways) {
        List<String> sockets = new ArrayList<>();
        for (List<String> bank : banks) {
            sockets.addAll(bank);
            Optional<Capacity> each = sizes().stream()
                    .filter(size -> size.kibibytes() * sockets.size() == total.kibibytes())
                    .filter(size -> ways.stream().anyMatch(way -> allows(way, size)))
                    .findFirst();
            if (each.isPresent()) {
                return Optional.of(new Split(List.copyOf(sockets), each.get()));
            }
        }
        return Optional.empty();
    }

    private List<Capacity> sizes() {
        boolean small = form == Form.SIMM_30;
        Capacity largest = small ? LARGEST_30 : LARGEST_72;
        List<Capacity> sizes = new ArrayList<>();
        for (Capacity size = small ? SMALLEST_30 : SMALLEST_72; largest.atLeast(size);
                size = Capacity.ofKiB(size.kibibytes() * (small ? STEP_30 : STEP_72))) {
            sizes.add(size);
        }
        return sizes;
    }

    private static boolean allows(Takes way, Capacity size) {
        return way.largestModule().map(largest -> largest.atLeast(size)).orElse(true)
                && way.smallestModule().map(size::atLeast).orElse(true);
    }
}
