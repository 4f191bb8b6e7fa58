package slotledger.bench.fleet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import slotledger.model.board.BoardForm;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/** Modules that go into the same boards, with the usual grades and chips of their time. */
enum Technology {
    DDR2_DESKTOP(Generation.DDR2, Form.DIMM, BoardForm.DESKTOP, 1800, 1, 700,
            List.of(533, 667, 800), List.of(512, 1024, 2048)),
    DDR2_NOTEBOOK(Generation.DDR2, Form.SO_DIMM, BoardForm.NOTEBOOK, 1800, 1, 750,
            List.of(533, 667, 800), List.of(512, 1024, 2048)),
    DDR3_DESKTOP(Generation.DDR3, Form.DIMM, BoardForm.DESKTOP, 1500, 4, 260,
            List.of(1066, 1333, 1600), List.of(1024, 2048, 4096, 8192)),
    DDR3_NOTEBOOK(Generation.DDR3, Form.SO_DIMM, BoardForm.NOTEBOOK, 1500, 4, 280,
            List.of(1066, 1333, 1600), List.of(1024, 2048, 4096, 8192)),
    DDR4_DESKTOP(Generation.DDR4, Form.DIMM, BoardForm.DESKTOP, 1200, 8, 190,
            List.of(2133, 2400, 2666, 3200), List.of(4096, 8192, 16_384)),
    DDR4_NOTEBOOK(Generation.DDR4, Form.SO_DIMM, BoardForm.NOTEBOOK, 1200, 8, 200,
            List.of(2133, 2400, 2666, 3200), List.of(4096, 8192, 16_384)),
    DDR4_SERVER(Generation.DDR4, Form.DIMM, BoardForm.SERVER, 1200, 64, 310,
            List.of(2133, 2400, 2666, 2933), List.of(4096, 8192, 16_384));

    static final List<Technology> USUAL = List.of(DDR3_DESKTOP, DDR3_NOTEBOOK, DDR4_DESKTOP, DDR4_NOTEBOOK);
    static final List<Technology> WIDE = List.of(
            DDR2_DESKTOP, DDR2_NOTEBOOK, DDR3_DESKTOP, DDR3_NOTEBOOK, DDR4_DESKTOP, DDR4_NOTEBOOK);

    private static final int WORD = 64;
    private static final int BITS = 8;

    private final Generation generation;
    private final Form form;
    private final BoardForm computer;
    private final Voltage voltage;
    private final int unit;
    private final int price;
    private final List<Integer> rates;
    private final List<Integer> chips;

    Technology(Generation generation, Form form, BoardForm computer, int millivolts, int unit, int price,
            List<Integer> rates, List<Integer> chips) {
        this.generation = generation;
        this.form = form;
        this.computer = computer;
        this.voltage = Voltage.ofMillivolts(millivolts);
        this.unit = unit;
        this.price = price;
        this.rates = rates;
        this.chips = chips;
    }

    Generation generation() {
        return generation;
    }

    Form form() {
        return form;
    }

    BoardForm computer() {
        return computer;
    }

    Voltage voltage() {
        return voltage;
    }

    /** What a plain machine of the time should have; targets are one, two or four times as much. */
    Capacity unit() {
        return Capacity.ofGiB(unit);
    }

    /** Minor units for one GiB, about. */
    int price() {
        return price;
    }

    boolean isServer() {
        return computer == BoardForm.SERVER;
    }

    Buffering buffering() {
        return isServer() ? Buffering.REGISTERED : Buffering.UNBUFFERED;
    }

    Rate fastest() {
        return Rate.of(Collections.max(rates));
    }

    ChipSize largestChip() {
        return ChipSize.ofMbit(Collections.max(chips));
    }

    /** So many kinds: capacities in turn, so that each is there as often as can be. */
    List<ModuleKind> kinds(int count, Random random) {
        Map<Capacity, List<ModuleKind>> byCapacity = new TreeMap<>(Collections.reverseOrder());
        for (ModuleKind kind : all()) {
            byCapacity.computeIfAbsent(kind.capacity(), unused -> new ArrayList<>()).add(kind);
        }
        byCapacity.values().forEach(kinds -> Collections.shuffle(kinds, random));
        List<ModuleKind> chosen = new ArrayList<>();
        for (int turn = 0; chosen.size() < count; turn++) {
            for (List<ModuleKind> kinds : byCapacity.values()) {
                if (turn < kinds.size() && chosen.size() < count) {
                    chosen.add(kinds.get(turn));
                }
            }
        }
        return chosen;
    }

    private List<ModuleKind> all() {
        List<ModuleKind> all = new ArrayList<>();
        for (int rate : rates) {
            for (int chip : chips) {
                for (ChipWidth width : List.of(isServer() ? ChipWidth.X4 : ChipWidth.X16, ChipWidth.X8)) {
                    for (int ranks = 1; ranks <= 2; ranks++) {
                        all.add(kind(rate, chip, width, ranks, 0));
                        all.add(kind(rate, chip, width, ranks, 1));
                    }
                }
            }
        }
        return all;
    }

    private ModuleKind kind(int rate, int chip, ChipWidth width, int ranks, int slower) {
        Capacity capacity = Capacity.ofMiB((long) chip * (WORD / width.bits()) * ranks / BITS);
        ModuleKind kind = ModuleKind.of(generation, form, capacity)
                .withRanks(ranks).with(width).with(ChipSize.ofMbit(chip))
                .with(isServer() ? ErrorCheck.ECC : ErrorCheck.NONE).with(buffering())
                .with(Rate.of(rate)).withCasLatency(latency(rate) + slower).with(voltage);
        return isServer() ? kind.withCheckBits(BITS) : kind;
    }

    /** About 13.75 ns, as the usual grades have it. */
    private static int latency(int rate) {
        return Math.max(4, Math.round(rate * 13.75f / 2000));
    }
}
