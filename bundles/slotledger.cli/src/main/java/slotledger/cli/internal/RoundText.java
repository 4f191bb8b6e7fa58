package slotledger.cli.internal;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Station;
import slotledger.model.work.Job;
import slotledger.model.work.JobState;
import slotledger.model.work.Round;
import slotledger.model.work.RoundSheet;
import slotledger.model.work.WorkWords;

/** Rounds and jobs in words and as facts. */
final class RoundText {

    private static final DateTimeFormatter FROM = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");
    private static final DateTimeFormatter UNTIL = DateTimeFormatter.ofPattern("HH:mm");

    private final Map<AssetTag, Job> jobs = new LinkedHashMap<>();
    private final boolean bags;

    /** @param bags whether each bag is shown */
    RoundText(List<Job> jobs, boolean bags) {
        jobs.forEach(job -> this.jobs.put(job.machine(), job));
        this.bags = bags;
    }

    void report(Answer.Builder answer, List<RoundSheet> sheets) {
        List<Object> rounds = new ArrayList<>();
        for (RoundSheet sheet : sheets) {
            round(answer, sheet);
            rounds.add(facts(sheet));
        }
        if (sheets.isEmpty()) {
            answer.line("There are no rounds yet; --technician makes them.");
        }
        answer.line("");
        answer.item("Jobs", states(new ArrayList<>(jobs.values())));
        long late = sheets.stream().filter(sheet -> sheet.round().technician().isEmpty())
                .mapToLong(sheet -> sheet.round().machines().size()).sum();
        if (late > 0) {
            answer.wrapped("No time", "No window has room for " + WorkWords.count(late, "machine")
                    + ": give more windows or technicians.");
        }
        answer.fact("rounds", rounds).fact("jobs", jobs.values().stream().map(RoundText::facts).toList());
    }

    private void round(Answer.Builder answer, RoundSheet sheet) {
        Round round = sheet.round();
        answer.line(round.id() + "  " + (round.technician().isEmpty() ? "nobody yet" : round.technician())
                + round.window().map(window -> ", " + FROM.format(window.from()) + " to "
                        + UNTIL.format(window.until())).orElse("")
                + place(round));
        answer.wrapped("Machines", states(round.machines().stream().map(jobs::get).toList()) + ": "
                + round.machines().stream().map(AssetTag::value).collect(Collectors.joining(", ")));
        if (!sheet.after().isEmpty()) {
            answer.wrapped("After", "round " + String.join(", ", sheet.after())
                    + ", because modules for here come out of machines there");
        }
        sheet.waits().forEach(wait -> answer.wrapped("Waits", wait.machine() + " is opened before " + wait.donor()
                + " of round " + wait.round() + " gives what goes in: leave it open, or borrow a set until then"));
        Map<String, Integer> fetch = new TreeMap<>();
        sheet.bags().forEach(bag -> bag.items().stream().filter(item -> !(item.from() instanceof Station.InSlot))
                .forEach(item -> fetch.merge(item.content() + " " + from(item.from()), 1, Integer::sum)));
        answer.items("Fetch", fetch.entrySet().stream().map(each -> each.getValue() + " x " + each.getKey()).toList());
        if (bags) {
            sheet.bags().forEach(bag -> bag(answer, bag));
            round.machines().stream().map(jobs::get).forEach(job -> job(answer, job));
        }
    }

    private static void bag(Answer.Builder answer, RoundSheet.Bag bag) {
        answer.items("Bag " + bag.machine(), bag.items().stream()
                .map(item -> item.content() + " " + from(item.from()) + ", for " + item.slot()).toList());
    }

    static void job(Answer.Builder answer, Job job) {
        List<String> lines = new ArrayList<>();
        lines.add(job.state().text() + (job.reason().isEmpty() ? "" : ": " + job.reason()));
        if (!job.ticked().isEmpty()) {
            lines.add("steps done: " + job.ticked().stream().map(String::valueOf).collect(Collectors.joining(", ")));
        }
        job.serials().forEach((slot, serial) -> lines.add(slot + " holds serial number " + serial));
        job.deviations().forEach(other -> lines.add(WorkWords.of(other)));
        answer.items("Job " + job.machine(), lines);
    }

    private static String place(Round round) {
        String where = (round.site() + (round.room().isEmpty() ? "" : " / " + round.room())).strip();
        return where.isEmpty() ? "" : ", " + where;
    }

    private static String from(Station station) {
        if (station instanceof Station.InSlot in) {
            return "out of " + in.machine() + ", " + in.slot();
        }
        return station instanceof Station.FromOrder order ? "from order " + order.offer() : "from the shelf";
    }

    /** "3 done, 1 failed". */
    private static String states(List<Job> jobs) {
        Map<JobState, Integer> counts = new EnumMap<>(JobState.class);
        jobs.forEach(job -> counts.merge(job.state(), 1, Integer::sum));
        return counts.isEmpty() ? "none" : counts.entrySet().stream()
                .map(each -> each.getValue() + " " + each.getKey().text()).collect(Collectors.joining(", "));
    }

    private static Map<String, Object> facts(RoundSheet sheet) {
        Map<String, Object> facts = new LinkedHashMap<>();
        Round round = sheet.round();
        facts.put("id", round.id());
        facts.put("plan", round.plan());
        facts.put("technician", round.technician());
        facts.put("site", round.site());
        facts.put("room", round.room());
        round.window().ifPresent(window -> {
            facts.put("from", window.from().toString());
            facts.put("until", window.until().toString());
        });
        facts.put("after", sheet.after());
        facts.put("machines", round.machines().stream().map(AssetTag::value).toList());
        return facts;
    }

    static Map<String, Object> facts(Job job) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("machine", job.machine().value());
        facts.put("plan", job.plan());
        facts.put("state", job.state().id());
        facts.put("reason", job.reason());
        facts.put("steps", List.copyOf(job.ticked()));
        facts.put("serials", job.serials());
        facts.put("deviations", job.deviations().stream().map(WorkWords::of).toList());
        return facts;
    }
}
