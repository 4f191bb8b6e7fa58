package slotledger.app.internal;

import java.text.Normalizer;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slotledger.app.RoundWish;
import slotledger.app.RoundWish.OpenTime;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Whereabouts;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;
import slotledger.model.work.Round;
import slotledger.model.work.Round.Window;

/**
 * Shares the order of work out among technicians. The order is cut into pieces of one site, which keep it; each piece
 * goes to whoever is through with it first, and begins after all pieces its modules come from.
 */
final class RoundMaker {

    /** Where no times are given they only serve to share out evenly, and are not shown. */
    private static final Window ANY_TIME = new Window(LocalDateTime.of(2000, 1, 1, 0, 0),
            LocalDateTime.of(3000, 1, 1, 0, 0));
    private static final int LONGEST_NAME = 20;

    private final RoundWish wish;
    private final int plan;
    private final List<Walker> walkers;
    private final Map<String, Integer> numbers = new HashMap<>();

    RoundMaker(RoundWish wish, int plan) {
        this.wish = wish;
        this.plan = plan;
        this.walkers = wish.technicians().stream().map(Walker::new).toList();
    }

    /** A technician while rounds are shared out. */
    private static final class Walker {
        private final String name;
        private LocalDateTime free = LocalDateTime.MIN;
        private String site = "";
        private boolean started;

        Walker(String name) {
            this.name = name;
        }
    }

    private record Offer(Walker walker, LocalDateTime from, LocalDateTime until) {
    }

    /** @param work machines to do, in the order of work */
    List<Round> rounds(List<MachinePlan> work) {
        List<List<MachinePlan>> pieces = pieces(work);
        Map<AssetTag, LocalDateTime> ends = new HashMap<>();
        List<Round> rounds = new ArrayList<>();
        for (List<MachinePlan> piece : pieces) {
            Optional<Offer> offer = earliest(piece, ends);
            offer.ifPresent(taken -> {
                taken.walker().free = taken.until();
                taken.walker().site = where(piece.get(0)).site();
                taken.walker().started = true;
                piece.forEach(machine -> ends.put(machine.machine().tag(), taken.until()));
            });
            rounds.add(round(piece, offer));
        }
        return rounds;
    }

    private List<List<MachinePlan>> pieces(List<MachinePlan> work) {
        List<List<MachinePlan>> pieces = new ArrayList<>();
        List<MachinePlan> piece = new ArrayList<>();
        for (List<MachinePlan> room : rooms(work)) {
            Whereabouts where = where(room.get(0));
            int most = most(where);
            boolean goesOn = !piece.isEmpty() && where(piece.get(0)).site().equals(where.site())
                    && times(where(piece.get(0))).equals(times(where)) && piece.size() + room.size() <= most;
            if (!goesOn && !piece.isEmpty()) {
                pieces.add(List.copyOf(piece));
                piece.clear();
            }
            for (MachinePlan machine : room) {
                if (piece.size() == most) {
                    pieces.add(List.copyOf(piece));
                    piece.clear();
                }
                piece.add(machine);
            }
        }
        if (!piece.isEmpty()) {
            pieces.add(piece);
        }
        return pieces;
    }

    private static List<List<MachinePlan>> rooms(List<MachinePlan> work) {
        List<List<MachinePlan>> rooms = new ArrayList<>();
        for (MachinePlan machine : work) {
            if (rooms.isEmpty() || !where(rooms.get(rooms.size() - 1).get(0)).equals(where(machine))) {
                rooms.add(new ArrayList<>());
            }
            rooms.get(rooms.size() - 1).add(machine);
        }
        return rooms;
    }

    /** As many as a usual window takes, so that no round waits for the longest one; of two usual ones the shorter. */
    private int most(Whereabouts where) {
        List<Long> minutes = times(where).stream()
                .map(window -> Duration.between(window.from(), window.until()).toMinutes()).sorted().toList();
        long usual = minutes.isEmpty() ? 0 : minutes.get((minutes.size() - 1) / 2);
        return (int) Math.max(1, Math.min(wish.machines(), usual / Math.max(1, wish.perMachine().toMinutes())));
    }

    private List<Window> times(Whereabouts where) {
        if (wish.windows().isEmpty()) {
            return List.of(ANY_TIME);
        }
        for (String place : List.of(where.toString(), where.site(), "")) {
            List<Window> own = wish.windows().stream().filter(time -> time.place().equalsIgnoreCase(place))
                    .map(OpenTime::window).sorted((one, other) -> one.from().compareTo(other.from())).toList();
            if (!own.isEmpty()) {
                return own;
            }
        }
        return List.of();
    }

    private Optional<Offer> earliest(List<MachinePlan> piece, Map<AssetTag, LocalDateTime> ends) {
        LocalDateTime ready = LocalDateTime.MIN;
        for (MachinePlan machine : piece) {
            for (Move move : machine.moves()) {
                LocalDateTime end = move.from() instanceof Station.InSlot from ? ends.get(from.machine()) : null;
                ready = end != null && end.isAfter(ready) ? end : ready;
            }
        }
        Offer best = null;
        for (Walker walker : walkers) {
            Optional<Offer> offer = offer(walker, piece, ready);
            if (offer.isPresent() && (best == null || offer.get().until().isBefore(best.until()))) {
                best = offer.get();
            }
        }
        return Optional.ofNullable(best);
    }

    private Optional<Offer> offer(Walker walker, List<MachinePlan> piece, LocalDateTime ready) {
        Whereabouts where = where(piece.get(0));
        LocalDateTime there = walker.started && !walker.site.equals(where.site())
                ? walker.free.plus(wish.betweenSites()) : walker.free;
        for (Window window : times(where)) {
            LocalDateTime from = latest(window.from(), latest(there, ready));
            LocalDateTime until = from.plus(wish.perMachine().multipliedBy(piece.size()));
            if (!until.isAfter(window.until())) {
                return Optional.of(new Offer(walker, from, until));
            }
        }
        return Optional.empty();
    }

    private static LocalDateTime latest(LocalDateTime one, LocalDateTime other) {
        return one.isAfter(other) ? one : other;
    }

    private Round round(List<MachinePlan> piece, Optional<Offer> offer) {
        Whereabouts where = where(piece.get(0));
        boolean oneRoom = piece.stream().allMatch(machine -> where(machine).equals(where));
        String name = name(where.site());
        String id = "%s-%02d".formatted(name, numbers.merge(name, 1, Integer::sum));
        Map<AssetTag, MachinePlan> machines = new LinkedHashMap<>();
        piece.forEach(machine -> machines.put(machine.machine().tag(), machine));
        Optional<Window> window = wish.windows().isEmpty() ? Optional.empty()
                : offer.map(taken -> new Window(taken.from(), taken.until()));
        return new Round(id, plan, offer.map(taken -> taken.walker().name).orElse(""), where.site(),
                oneRoom ? where.room() : "", window, List.copyOf(machines.keySet()));
    }

    /** What an id takes of the name of a site. */
    private static String name(String site) {
        String letters = Normalizer.normalize(site, Normalizer.Form.NFD).toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        String name = letters.substring(0, Math.min(letters.length(), LONGEST_NAME)).replaceAll("-+$", "");
        return name.isEmpty() ? "round" : name;
    }

    private static Whereabouts where(MachinePlan machine) {
        return machine.machine().where();
    }
}
