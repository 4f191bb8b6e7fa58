package slotledger.model.work;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.AssetTag;

/**
 * How far the work of a project has come.
 *
 * @param plan   number of the plan the rounds were made of; 0 where none were made
 * @param rounds in the order of work
 * @param jobs   number of a plan to the jobs of it that something happened to
 */
public record WorkState(int plan, List<Round> rounds, Map<Integer, Map<AssetTag, Job>> jobs) {

    /** Nothing has begun. */
    public static final WorkState NONE = new WorkState(0, List.of(), Map.of());

    public WorkState {
        rounds = List.copyOf(rounds);
        Map<Integer, Map<AssetTag, Job>> copy = new LinkedHashMap<>();
        jobs.forEach((number, of) -> copy.put(number, Collections.unmodifiableMap(new LinkedHashMap<>(of))));
        jobs = Collections.unmodifiableMap(copy);
    }

    /** A machine's job in a plan; planned where nothing happened to it. */
    public Job job(int number, AssetTag machine) {
        return jobs.getOrDefault(number, Map.of()).getOrDefault(machine, Job.planned(machine, number));
    }
}
