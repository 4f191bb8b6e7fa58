package slotledger.model.project;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.Round;
import slotledger.model.work.WorkState;

/** Goes through what a journal says of rounds and jobs. */
final class WorkBuilder {

    private final Map<Integer, Map<AssetTag, Job>> jobs = new LinkedHashMap<>();
    private final Set<UUID> known = new HashSet<>();
    private List<Round> rounds = List.of();
    private int plan;

    void take(Change.Rounds made) {
        plan = made.plan();
        rounds = made.rounds();
    }

    /** An event that was taken back stays known, so that a device that sends it again doesn't restore it. */
    void take(Change.Worked worked, boolean holds) {
        for (JobEvent event : worked.events()) {
            if (known.add(event.id()) && holds) {
                jobs.computeIfAbsent(event.plan(), number -> new LinkedHashMap<>()).compute(event.machine(),
                        (machine, job) -> (job == null ? Job.planned(machine, event.plan()) : job).after(event));
            }
        }
    }

    boolean knows(UUID event) {
        return known.contains(event);
    }

    Job job(int number, AssetTag machine) {
        return jobs.getOrDefault(number, Map.of()).getOrDefault(machine, Job.planned(machine, number));
    }

    WorkState build() {
        return new WorkState(plan, rounds, jobs);
    }
}
