package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.module.Piece;

/** All openings in walking order, with sites, rooms, cost centres and kinds as numbers. */
final class WorkTable {

    private final List<Opening> openings;
    private final Swap[] swaps;
    private final int[] rooms;
    private final int[] centres;
    private final List<String> centreNames;
    private final List<Integer> roomStarts = new ArrayList<>();
    private final List<Integer> siteOfRoom = new ArrayList<>();
    private final List<Piece> pieces;

    WorkTable(List<Opening> unordered) {
        openings = unordered.stream().sorted(Opening.WALK).toList();
        swaps = new Swap[openings.size()];
        rooms = new int[openings.size()];
        centres = new int[openings.size()];
        Map<SlotChanges, Swap> known = new IdentityHashMap<>();
        Map<Piece, Integer> numbers = new LinkedHashMap<>();
        Map<String, Integer> names = new LinkedHashMap<>();
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = openings.get(i);
            swaps[i] = known.computeIfAbsent(opening.changes(), changes -> Swap.of(changes, numbers));
            Integer name = names.putIfAbsent(opening.centre(), names.size());
            centres[i] = name == null ? names.size() - 1 : name;
            rooms[i] = roomAlong(i);
        }
        roomStarts.add(openings.size());
        pieces = List.copyOf(numbers.keySet());
        centreNames = List.copyOf(names.keySet());
    }

    private int roomAlong(int opening) {
        Opening here = openings.get(opening);
        Opening before = opening == 0 ? null : openings.get(opening - 1);
        if (before == null || !before.where().equals(here.where())) {
            boolean sameSite = before != null && before.where().site().equals(here.where().site());
            int site = before == null ? 0 : siteOfRoom.get(siteOfRoom.size() - 1) + (sameSite ? 0 : 1);
            siteOfRoom.add(site);
            roomStarts.add(opening);
        }
        return siteOfRoom.size() - 1;
    }

    int size() {
        return openings.size();
    }

    Opening opening(int number) {
        return openings.get(number);
    }

    Swap swap(int opening) {
        return swaps[opening];
    }

    int centre(int opening) {
        return centres[opening];
    }

    List<String> centres() {
        return centreNames;
    }

    List<Piece> pieces() {
        return pieces;
    }

    int room(int opening) {
        return rooms[opening];
    }

    int rooms() {
        return siteOfRoom.size();
    }

    int siteOf(int room) {
        return siteOfRoom.get(room);
    }

    int sites() {
        return siteOfRoom.isEmpty() ? 0 : siteOfRoom.get(siteOfRoom.size() - 1) + 1;
    }

    /** The first opening in a room; that of the number after the last room is the end of the way. */
    int startOf(int room) {
        return roomStarts.get(room);
    }
}
