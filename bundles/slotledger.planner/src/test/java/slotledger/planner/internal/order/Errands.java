package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.trade.Shelf;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;

/** Openings written as text: "Main/Lab takes ab gives c"; a letter is a kind. */
final class Errands {

    final List<Opening> openings = new ArrayList<>();
    final Map<Character, Integer> shelf = new LinkedHashMap<>();
    final Map<Character, Integer> bought = new LinkedHashMap<>();

    static ModuleKind kind(char letter) {
        return ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(4)).with(Rate.of(1600 + letter));
    }

    Errands machine(String site, String room, String takes, String gives) {
        Map<String, SlotContent> before = new LinkedHashMap<>();
        Map<String, SlotContent> after = new LinkedHashMap<>();
        for (int slot = 0; slot < Math.max(takes.length(), gives.length()); slot++) {
            before.put("S" + slot, content(gives, slot));
            after.put("S" + slot, content(takes, slot));
        }
        Population now = new Population(before);
        openings.add(new Opening(new AssetTag("M%07d".formatted(openings.size())), new Whereabouts(site, room), "", now,
                SlotChanges.of(now, new Population(after))));
        return this;
    }

    private static SlotContent content(String letters, int slot) {
        return slot < letters.length() ? SlotContent.of(kind(letters.charAt(slot))) : SlotContent.EMPTY;
    }

    Errands bought(String letters) {
        letters.chars().forEach(letter -> bought.merge((char) letter, 1, Integer::sum));
        return this;
    }

    Supplies supplies() {
        Map<Piece, Integer> owned = new LinkedHashMap<>();
        shelf.forEach((letter, count) -> owned.put(kind(letter), count));
        Supplies supplies = new Supplies(new Shelf(owned));
        bought.forEach((letter, count) -> supplies.order(kind(letter), "", "offer-" + letter, count));
        return supplies;
    }

    Workshop work() {
        return new Workshop(openings, supplies(), true);
    }

    /** Random openings that take and give at most so many; what they take and nobody gives is bought or owned. */
    static Errands random(Random random, int machines, int kinds, int most, int places) {
        Errands made = new Errands();
        int[] balance = new int[kinds];
        for (int i = 0; i < machines; i++) {
            int takes = random.nextInt(most + 1);
            int gives = takes == 0 ? 1 + random.nextInt(most) : random.nextInt(most + 1);
            int in = random.nextInt(kinds);
            int out = (in + 1 + random.nextInt(kinds - 1)) % kinds;
            balance[in] += takes;
            balance[out] -= gives;
            made.machine("Site" + random.nextInt(places), "Room" + random.nextInt(places),
                    letters(in, takes), letters(out, gives));
        }
        for (int kind = 0; kind < kinds; kind++) {
            made.supply(random, (char) ('a' + kind), balance[kind]);
        }
        return made;
    }

    /** Random openings that swap one for one. */
    static Errands exchangers(Random random, int machines, int kinds) {
        Errands made = new Errands();
        int[] balance = new int[kinds];
        for (int i = 0; i < machines; i++) {
            int in = random.nextInt(kinds);
            int out = (in + 1 + random.nextInt(kinds - 1)) % kinds;
            balance[in]++;
            balance[out]--;
            made.machine("Site", "Room", letters(in, 1), letters(out, 1));
        }
        for (int kind = 0; kind < kinds; kind++) {
            made.supply(random, (char) ('a' + kind), balance[kind]);
        }
        return made;
    }

    private void supply(Random random, char letter, int missing) {
        if (missing > 0) {
            int owned = random.nextInt(missing + 1);
            if (owned > 0) {
                shelf.put(letter, owned);
            }
            if (missing > owned) {
                bought.put(letter, missing - owned);
            }
        }
    }

    private static String letters(int kind, int count) {
        return String.valueOf((char) ('a' + kind)).repeat(count);
    }
}
