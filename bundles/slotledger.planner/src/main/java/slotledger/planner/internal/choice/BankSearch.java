package slotledger.planner.internal.choice;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Goes through the fillings of few banks: each bank stays, is emptied, or is filled with one kind. */
final class BankSearch {

    private final ClassSockets sockets;
    private final List<int[]> banks;
    private final long least;
    private final Fillings.Sieve sieve;
    private final int[] row;
    private final int[] brought;

    BankSearch(ClassSockets sockets, List<List<String>> banks, long least, Fillings.Sieve sieve) {
        this.sockets = sockets;
        this.banks = banks.stream()
                .map(bank -> bank.stream().mapToInt(sockets.judged().codes()::socket).toArray())
                .toList();
        this.least = least;
        this.sieve = sieve;
        row = sockets.now();
        brought = new int[sockets.kindCount()];
    }

    void search() {
        fill(0);
    }

    private void fill(int bank) {
        if (bank == banks.size()) {
            Fillings.offer(sockets, row, least, sieve);
            return;
        }
        fill(bank + 1);
        fill(bank, SocketCodes.EMPTY);
        for (int kind = 0; kind < sockets.kindCount(); kind++) {
            boolean isNew = sockets.owned(kind) == 0 && !sockets.isFiller(kind);
            brought[kind] += isNew ? 1 : 0;
            if (!sockets.isUnread(kind)
                    && (!isNew || Arrays.stream(brought).filter(count -> count > 0)
                            .count() <= Fillings.MOST_NEW_KINDS)) {
                fill(bank, sockets.code(kind));
            }
            brought[kind] -= isNew ? 1 : 0;
        }
    }

    private void fill(int bank, int code) {
        if (IntStream.of(banks.get(bank)).allMatch(socket -> sockets.now(socket) == code)) {
            return;
        }
        for (int socket : banks.get(bank)) {
            row[socket] = code;
        }
        fill(bank + 1);
        for (int socket : banks.get(bank)) {
            row[socket] = sockets.now(socket);
        }
    }
}
