package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Piece;

/** All openings by site, room and tag, as a technician walks; sites, rooms, cost centres and kinds as numbers. */
final class WorkTable {

    private final List<Opening> openings;
    private final int[] given;
    private final Swap[] swaps;
    private final int[] rooms;
    private final int[] centres;
    private final List<String> centreNames;
    private final int[] roomStarts;
    private final int[] siteOfRoom;
    private final List<Piece> pieces;

    WorkTable(List<Opening> unordered) {
        Map<Whereabouts, List<Integer>> byRoom = byRoom(unordered);
        openings = new ArrayList<>(unordered.size());
        given = new int[unordered.size()];
        swaps = new Swap[unordered.size()];
        rooms = new int[unordered.size()];
        centres = new int[unordered.size()];
        roomStarts = new int[byRoom.size() + 1];
        siteOfRoom = new int[byRoom.size()];
        int room = 0;
        String before = null;
        for (Map.Entry<Whereabouts, List<Integer>> each : byRoom.entrySet()) {
            roomStarts[room] = openings.size();
            each.getValue().sort(Comparator.comparing(number -> unordered.get(number).tag()));
            for (int number : each.getValue()) {
                given[openings.size()] = number;
                openings.add(unordered.get(number));
            }
            Arrays.fill(rooms, roomStarts[room], openings.size(), room);
            String site = each.getKey().site();
            siteOfRoom[room] = room == 0 ? 0 : siteOfRoom[room - 1] + (site.equals(before) ? 0 : 1);
            before = site;
            room++;
        }
        roomStarts[room] = openings.size();
        Map<SlotChanges, Swap> known = new IdentityHashMap<>();
        Map<Piece, Integer> numbers = new LinkedHashMap<>();
        Map<String, Integer> names = new LinkedHashMap<>();
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = openings.get(i);
            swaps[i] = known.computeIfAbsent(opening.changes(), changes -> Swap.of(changes, numbers));
            Integer name = names.putIfAbsent(opening.centre(), names.size());
            centres[i] = name == null ? names.size() - 1 : name;
        }
        pieces = List.copyOf(numbers.keySet());
        centreNames = List.copyOf(names.keySet());
    }

    /** Rooms in walking order, with the places of their openings in the list. */
    private static Map<Whereabouts, List<Integer>> byRoom(List<Opening> unordered) {
        Map<Whereabouts, List<Integer>> rooms = new HashMap<>();
        for (int number = 0; number < unordered.size(); number++) {
            rooms.computeIfAbsent(unordered.get(number).where(), unused -> new ArrayList<>()).add(number);
        }
        return new TreeMap<>(rooms);
    }

    int size() {
        return openings.size();
    }

    Opening opening(int number) {
        return openings.get(number);
    }

    /** The place of an opening in the list it came in. */
    int given(int opening) {
        return given[opening];
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
        return siteOfRoom.length;
    }

    int siteOf(int room) {
        return siteOfRoom[room];
    }

    int sites() {
        return siteOfRoom.length == 0 ? 0 : siteOfRoom[siteOfRoom.length - 1] + 1;
    }

    /** The first opening in a room; that of the number after the last room is the end of the way. */
    int startOf(int room) {
        return roomStarts[room];
    }
}
