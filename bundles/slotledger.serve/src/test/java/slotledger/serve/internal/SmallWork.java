package slotledger.serve.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import slotledger.app.CardDesk;
import slotledger.app.DeskException;
import slotledger.app.Survey;
import slotledger.app.WorkDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.task.Progress;
import slotledger.model.work.Job;
import slotledger.model.work.JobCard;
import slotledger.model.work.JobEvent;
import slotledger.model.work.Round;

/** Rounds, jobs and cards in memory; what is recorded can be looked at, and writing can be made to fail. */
final class SmallWork implements WorkDesk, CardDesk {

    static final String ODD_TAG = "<img src=x onerror=document.title='run'>";

    final List<JobEvent> recorded = new ArrayList<>();
    final List<Author> authors = new ArrayList<>();
    volatile boolean broken;
    volatile List<Round> rounds = List.of(
            round("R1", "Ada Miles", "K-101", "K-102", ODD_TAG),
            round("R2", "Ben Orr", "K-201"));
    private final Map<AssetTag, Job> jobs = new LinkedHashMap<>();

    SmallWork() {
        rounds.forEach(round -> round.machines().forEach(tag -> jobs.put(tag, Job.planned(tag, 1))));
    }

    static Round round(String id, String technician, String... tags) {
        List<AssetTag> machines = new ArrayList<>();
        for (String tag : tags) {
            machines.add(new AssetTag(tag));
        }
        return new Round(id, 1, technician, "Main building", "Lab 2", Optional.empty(), machines);
    }

    @Override
    public List<Round> rounds(Path project) throws DeskException {
        checkWhole();
        return rounds;
    }

    @Override
    public synchronized List<Job> jobs(Path project) throws DeskException {
        checkWhole();
        return List.copyOf(jobs.values());
    }

    @Override
    public synchronized Job job(Path project, AssetTag machine) {
        return jobs.get(machine);
    }

    @Override
    public synchronized List<Job> record(Path project, List<JobEvent> events, Author author) throws DeskException {
        checkWhole();
        Set<AssetTag> told = new LinkedHashSet<>();
        for (JobEvent event : events) {
            UUID id = event.id();
            told.add(event.machine());
            if (recorded.stream().noneMatch(known -> known.id().equals(id))) {
                recorded.add(event);
                authors.add(author);
                jobs.computeIfPresent(event.machine(), (tag, job) -> job.after(event));
            }
        }
        return told.stream().map(jobs::get).toList();
    }

    @Override
    public List<JobCard> cards(Survey survey, Plan plan, int number) {
        throw new UnsupportedOperationException("Phones ask for a project's cards.");
    }

    @Override
    public List<JobCard> cards(Path project, int plan, Progress progress) {
        List<JobCard> cards = new ArrayList<>();
        for (AssetTag tag : jobs.keySet()) {
            cards.add(card(tag, cards.size() + 1, jobs.size()));
        }
        return cards;
    }

    private static JobCard card(AssetTag tag, int number, int of) {
        boolean odd = tag.value().equals(ODD_TAG);
        String module = odd ? "8 GB <script>document.title='run'</script>" : "8 GB DDR4-2400 DIMM";
        return new JobCard(tag, 1, number + " of " + of, "Main building / Lab 2", "Kestrin KB-515, desktop",
                "SN-00" + number, "4 GB to 16 GB",
                number == 2 ? List.of("Do these first, modules come from them: K-101.") : List.of(),
                List.of("Shut down fully, switch off and unplug the power cord.",
                        "Wear an antistatic wrist strap or touch bare metal of the case."),
                List.of("Take the 4 GB DDR4-2133 DIMM out of slot DIMM1. Put it into a bag for the shelf.",
                        "Put one " + module + " into slot DIMM1. It is new.",
                        "Put one " + module + " into slot DIMM2. It is new.",
                        "Check that all latches are closed, put back what you took off, close the machine."),
                "Power off, unplug, take out what was put in (DIMM1, DIMM2).",
                picture(odd, "4 GB DDR4-2133", "take out", ""), picture(odd, "8 GB DDR4-2400", "put in", "put in"),
                List.of("DIMM1", "DIMM2"),
                List.of(new JobCard.Receiving("DIMM1", module), new JobCard.Receiving("DIMM2", module)),
                List.of("Installed: 16 GB (16384 MB) (now 4 GB)", "Mode: dual channel"));
    }

    /** As export draws it; the odd machine's carries what a drawing of ours never has. */
    private static JobCard.Picture picture(boolean odd, String content, String first, String second) {
        String more = odd ? "<script>document.title='run'</script><image href='http://elsewhere.example/x'/>" : "";
        return new JobCard.Picture("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 336 70\">"
                + slot(0, "DIMM1", content, first) + slot(171, "DIMM2", second.isEmpty() ? "" : content, second)
                + more + "</svg>",
                List.of("Slot DIMM1, channel A: " + content + ", " + first, "Slot DIMM2, channel B: " + second));
    }

    private static String slot(int x, String label, String content, String mark) {
        return ("<g class=\"slot\"><rect x=\"%d\" y=\"2\" width=\"161\" height=\"66\" rx=\"4\" fill=\"none\" "
                + "stroke=\"currentColor\" stroke-width=\"3\" onclick=\"document.title='run'\"/>"
                + "<text x=\"%d\" y=\"20\" fill=\"currentColor\" font-size=\"15\" font-weight=\"bold\">%s</text>"
                + "<text x=\"%d\" y=\"40\" fill=\"currentColor\" font-size=\"13\">%s</text>"
                + "<text x=\"%d\" y=\"58\" fill=\"currentColor\" font-size=\"13\">%s</text></g>")
                .formatted(x + 2, x + 8, label, x + 8, mark, x + 8, content);
    }

    private void checkWhole() throws DeskException {
        if (broken) {
            throw new DeskException(DeskException.Trouble.INPUT, "The project /secret/folder is in use.");
        }
    }
}
