package slotledger.model.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;

/**
 * What lies ready on the bench while machines are opened in the order of work: modules and fillers pulled from one
 * machine for another that comes later.
 *
 * @param modules      the most modules and fillers that lie ready at once, between two machines
 * @param bags         the most machines they are for at once; so many bags or trays are needed
 * @param fullest      the machine after which most lie ready; empty where none ever does
 * @param betweenSites modules and fillers that go from one site to another
 * @param waits        machines opened before something that goes into them is pulled, in the order of work
 */
public record Bench(int modules, int bags, Optional<AssetTag> fullest, int betweenSites, List<Wait> waits) {

    /**
     * A machine that is opened before something that goes into it is pulled. It stays open until then, or gets a
     * borrowed set.
     *
     * @param machine which machine waits
     * @param set     what it waits for, and how many of each
     * @param until   the machine after which all of it is there
     */
    public record Wait(AssetTag machine, Map<SlotContent, Integer> set, AssetTag until) {
        public Wait {
            Objects.requireNonNull(machine, "machine");
            set = new LinkedHashMap<>(set);
            Objects.requireNonNull(until, "until");
        }

        @Override
        public Map<SlotContent, Integer> set() {
            return new LinkedHashMap<>(set);
        }
    }

    public Bench {
        Objects.requireNonNull(fullest, "fullest");
        waits = List.copyOf(waits);
    }

    /** Follows the work of a plan; machines that aren't opened don't matter. */
    public static Bench of(Plan plan) {
        List<MachinePlan> work = plan.work();
        Map<AssetTag, Integer> places = new HashMap<>();
        for (int place = 0; place < work.size(); place++) {
            places.put(work.get(place).machine().tag(), place);
        }
        int[] bagsMore = new int[work.size() + 1];
        int[] modulesMore = new int[work.size() + 1];
        int betweenSites = 0;
        List<Wait> waits = new ArrayList<>();
        for (int place = 0; place < work.size(); place++) {
            MachinePlan machine = work.get(place);
            int first = place;
            Map<SlotContent, Integer> late = new LinkedHashMap<>();
            int until = place;
            for (Move move : machine.moves()) {
                Integer from = donor(move, machine, places);
                if (from != null) {
                    betweenSites += isSameSite(work.get(from), machine) ? 0 : 1;
                    if (from < place) {
                        modulesMore[from]++;
                        modulesMore[place]--;
                        first = Math.min(first, from);
                    } else {
                        late.merge(move.content(), 1, Integer::sum);
                        until = Math.max(until, from);
                    }
                }
            }
            bagsMore[first]++;
            bagsMore[place]--;
            if (!late.isEmpty()) {
                waits.add(new Wait(machine.machine().tag(), late, work.get(until).machine().tag()));
            }
        }
        return fullest(work, modulesMore, bagsMore, betweenSites, waits);
    }

    /** The place of the other machine a move comes from; null where it comes from somewhere else. */
    private static Integer donor(Move move, MachinePlan machine, Map<AssetTag, Integer> places) {
        AssetTag tag = machine.machine().tag();
        return move.to() instanceof Station.InSlot to && to.machine().equals(tag)
                && move.from() instanceof Station.InSlot from && !from.machine().equals(tag)
                ? places.get(from.machine()) : null;
    }

    private static boolean isSameSite(MachinePlan one, MachinePlan other) {
        return one.machine().where().site().equals(other.machine().where().site());
    }

    private static Bench fullest(
            List<MachinePlan> work, int[] modulesMore, int[] bagsMore, int betweenSites, List<Wait> waits) {
        int modules = 0;
        int bags = 0;
        int mostModules = 0;
        int mostBags = 0;
        Optional<AssetTag> fullest = Optional.empty();
        for (int place = 0; place < work.size(); place++) {
            modules += modulesMore[place];
            bags += bagsMore[place];
            mostBags = Math.max(mostBags, bags);
            if (modules > mostModules) {
                mostModules = modules;
                fullest = Optional.of(work.get(place).machine().tag());
            }
        }
        return new Bench(mostModules, mostBags, fullest, betweenSites, waits);
    }
}
