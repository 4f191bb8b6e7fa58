package slotledger.catalog.internal.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import slotledger.model.board.BoardForm;
import slotledger.model.finding.Finding;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.BoardReport;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.unit.Capacity;

/**
 * What all machines of a model tell together. Where they contradict each other the word of most is taken, and those
 * that say otherwise are named in findings.
 *
 * @param labels       of all slots, in the firmware's order; numbers where it has no names
 * @param named        whether the labels are the firmware's
 * @param soldered     what is soldered, by label; empty where machines differ in it
 * @param generations  of modules in sockets, or of the soldered memory where there are no sockets
 * @param forms        of modules in sockets, or soldered
 * @param bufferings   that were seen
 * @param eccSeen      whether a module with check bits was seen in a machine that says it corrects errors
 * @param largest      of one module seen
 * @param largestTotal most that the firmware says the board takes
 * @param form         kind of computer
 * @param lies         what firmware says wrongly of this model, by code
 */
record ModelFacts(List<String> labels, boolean named, Map<String, Optional<ModuleKind>> soldered,
        Set<Generation> generations, Set<Form> forms, Set<Buffering> bufferings, boolean eccSeen,
        Optional<Capacity> largest, Optional<Capacity> largestTotal, Optional<BoardForm> form, Set<String> lies) {

    static ModelFacts of(List<BoardReport> model, List<Finding> findings) {
        List<String> labels = agreed(model, "draft-slots-differ", "slots", findings,
                report -> Optional.of(labels(report))).orElseThrow();
        List<BoardReport> alike = model.stream().filter(report -> labels(report).equals(labels)).toList();
        Map<String, Optional<ModuleKind>> soldered = soldered(alike, labels);
        List<ModuleKind> modules = new ArrayList<>();
        for (BoardReport report : alike) {
            for (int i = 0; i < labels.size(); i++) {
                if (!soldered.containsKey(labels.get(i))) {
                    report.machine().slots().get(i).content().module().ifPresent(modules::add);
                }
            }
        }
        List<ModuleKind> kinds = soldered.size() == labels.size()
                ? soldered.values().stream().flatMap(Optional::stream).toList() : modules;
        Set<Generation> generations = told(kinds, ModuleKind::generation);
        if (generations.size() > 1) {
            findings.add(DraftMaker.finding(model.get(0), "draft-generations-differ",
                    "Machines of this model are said to hold different kinds of memory: %s.".formatted(generations),
                    "one kind of memory", "Look at a module in one machine of each sort."));
        }
        return new ModelFacts(labels, model.get(0).machine().slots().stream().noneMatch(slot -> slot.label().isEmpty()),
                soldered, generations, told(kinds, ModuleKind::form), told(modules, ModuleKind::buffering),
                alike.stream().anyMatch(ModelFacts::correctsWithCheckBits),
                modules.stream().map(ModuleKind::capacity).max(Comparator.naturalOrder()),
                agreed(model, "draft-largest-differs", "most memory", findings, BoardReport::largestTotal),
                agreed(model, "draft-form-differs", "kind of computer", findings, BoardReport::form),
                model.stream().flatMap(report -> report.lies().stream())
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    /** Why no draft can be made. */
    Optional<String> hindrance() {
        if (labels.isEmpty()) {
            return Optional.of("The firmware lists no slots.");
        }
        if (generations.size() != 1) {
            return Optional.of(generations.isEmpty() ? "No machine of this model says what kind of memory it holds."
                    : "Machines of this model are said to hold different kinds of memory: %s.".formatted(generations));
        }
        return forms.isEmpty() ? Optional.of("No machine of this model says what form its modules have.")
                : Optional.empty();
    }

    /** What a person has to find out, in words. */
    List<String> open() {
        List<String> open = new ArrayList<>();
        if (soldered.size() < labels.size()) {
            open.add("which slot belongs to which channel, and in which order they are filled");
            open.add("the largest module, and the rates with one and two modules in a channel");
        }
        if (!named) {
            open.add("the printed names of the slots");
        }
        if (largestTotal.isEmpty()) {
            open.add("the largest total");
        }
        if (!eccSeen && soldered.size() < labels.size()) {
            open.add("what becomes of ECC modules");
        }
        if (bufferings.isEmpty() && soldered.size() < labels.size()) {
            open.add("whether modules must be unbuffered or registered");
        }
        if (form.isEmpty()) {
            open.add("what kind of computer it is");
        }
        return open;
    }

    private static List<String> labels(BoardReport report) {
        List<String> labels = new ArrayList<>();
        List<ObservedSlot> slots = report.machine().slots();
        for (int i = 0; i < slots.size(); i++) {
            labels.add(slots.get(i).label().map(String::strip).filter(name -> !name.isBlank())
                    .orElse(String.valueOf(i + 1)));
        }
        return labels;
    }

    /** The value of most machines that tell one; who tells another is a finding. */
    private static <T> Optional<T> agreed(List<BoardReport> model, String code, String what, List<Finding> findings,
            Function<BoardReport, Optional<T>> fact) {
        Map<T, List<BoardReport>> votes = new LinkedHashMap<>();
        for (BoardReport report : model) {
            fact.apply(report).ifPresent(value -> votes.computeIfAbsent(value, none -> new ArrayList<>()).add(report));
        }
        Optional<T> most = votes.entrySet().stream()
                .max(Comparator.comparingInt((Map.Entry<T, List<BoardReport>> vote) -> vote.getValue().size()))
                .map(Map.Entry::getKey);
        votes.forEach((value, reports) -> {
            if (!value.equals(most.orElseThrow())) {
                findings.add(DraftMaker.finding(reports.get(0), code,
                        "%d of %d machines of this model tell another %s: %s instead of %s.".formatted(reports.size(),
                                model.size(), what, value, most.get()), "machines of one model that agree",
                        "Look at one of each sort; maybe the model has variants that need a board file each."));
            }
        });
        return most;
    }

    private static Map<String, Optional<ModuleKind>> soldered(List<BoardReport> alike, List<String> labels) {
        Map<String, Optional<ModuleKind>> soldered = new LinkedHashMap<>();
        for (int i = 0; i < labels.size(); i++) {
            int at = i;
            List<SlotContent> contents = alike.stream().map(report -> report.machine().slots().get(at).content())
                    .toList();
            boolean any = contents.stream().flatMap(content -> content.module().stream())
                    .anyMatch(kind -> kind.form().equals(Optional.of(Form.SOLDERED)));
            if (any) {
                soldered.put(labels.get(i), contents.stream().distinct().count() == 1 ? contents.get(0).module()
                        : Optional.empty());
            }
        }
        return soldered;
    }

    private static boolean correctsWithCheckBits(BoardReport report) {
        return report.corrects().equals(Optional.of(true)) && report.machine().slots().stream()
                .anyMatch(slot -> slot.content().module().flatMap(ModuleKind::errorCheck)
                        .equals(Optional.of(ErrorCheck.ECC)));
    }

    private static <T extends Comparable<T>> Set<T> told(List<ModuleKind> kinds,
            Function<ModuleKind, Optional<T>> fact) {
        return kinds.stream().map(fact).flatMap(Optional::stream).collect(Collectors.toCollection(TreeSet::new));
    }
}
