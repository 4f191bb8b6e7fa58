package slotledger.app.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import slotledger.app.LookAt;
import slotledger.app.LookAt.How;
import slotledger.app.LookAt.Question;
import slotledger.app.Survey;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Station;
import slotledger.model.source.Ground;
import slotledger.model.unit.Money;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/**
 * What to look at first: every missing fact that a plan's verdicts hang on, gathered for machines that are alike (same
 * board, same modules), with the money that the plan spends on them.
 */
final class LookFirst {

    private static final Question DRAFT = new Question(
            "the board is a draft of what its firmware says: channels, largest module, order of filling",
            "Look them up in the model's manual, then write the manual and page into the board file as its source.");

    private final MemoryRules rules;
    private final Survey survey;
    private final Plan plan;
    private final Map<AssetTag, Map<String, Money>> bought = new HashMap<>();
    private final Map<List<Object>, Group> groups = new LinkedHashMap<>();

    LookFirst(MemoryRules rules, Survey survey, Plan plan) {
        this.rules = rules;
        this.survey = survey;
        this.plan = plan;
    }

    List<LookAt> list() {
        for (Purchase purchase : plan.purchases()) {
            for (Purchase.Use use : purchase.uses()) {
                Money share = new Money(Math.multiplyExact(purchase.total().minor(), (long) use.modules())
                        / purchase.modules(), purchase.total().currency());
                bought.computeIfAbsent(use.machine(), none -> new TreeMap<>())
                        .merge(purchase.offer().id(), share, Money::plus);
            }
        }
        plan.machines().forEach(this::planned);
        unresolved();
        return groups.values().stream().map(this::made)
                .sorted(Comparator.comparing(LookAt::stake).reversed().thenComparing(LookAt::how)
                        .thenComparing(each -> -each.machines().size()).thenComparing(LookAt::subject)).toList();
    }

    /** What is gathered of machines that are alike. */
    private static final class Group {
        private final How how;
        private final String subject;
        private final Set<AssetTag> machines = new LinkedHashSet<>();
        private final Set<Question> questions = new LinkedHashSet<>();
        private final Set<String> offers = new LinkedHashSet<>();

        Group(How how, String subject) {
            this.how = how;
            this.subject = subject;
        }
    }

    private void planned(MachinePlan machine) {
        boolean waits = machine.obstacle().filter(why -> why.kind() == Obstacle.Kind.MISSING_FACT)
                .isPresent();
        if (!machine.isOpened() && !waits) {
            return;
        }
        if (survey.fleet().boards().get(machine.machine().board()).source().ground() == Ground.FIRMWARE) {
            add(How.READ_DOCUMENT, boardName(machine), List.of(machine.machine().board()), machine, DRAFT);
        }
        Map<MissingFact, Set<String>> facts = new TreeMap<>();
        rules.judge(Setup.of(survey.fleet(), machine.machine()).with(machine.after())).reasons()
                .forEach(reason -> collect(reason, facts));
        machine.obstacle().ifPresent(why -> why.reasons().forEach(reason -> collect(reason, facts)));
        Map<String, String> offers = offers(machine);
        facts.forEach((fact, slots) -> sort(machine, fact, slots, offers));
    }

    private static void collect(Reason reason, Map<MissingFact, Set<String>> facts) {
        reason.missing().ifPresent(fact ->
                facts.computeIfAbsent(fact, none -> new LinkedHashSet<>()).addAll(reason.slots()));
        reason.because().forEach(finer -> collect(finer, facts));
    }

    /** The offers of the modules that the plan puts into the machine's slots. */
    private static Map<String, String> offers(MachinePlan machine) {
        Map<String, String> offers = new HashMap<>();
        for (Move move : machine.moves()) {
            if (move.from() instanceof Station.FromOrder order && move.to() instanceof Station.InSlot slot
                    && slot.machine().equals(machine.machine().tag())) {
                offers.put(slot.slot(), order.offer());
            }
        }
        return offers;
    }

    private void sort(MachinePlan machine, MissingFact fact, Set<String> slots, Map<String, String> offers) {
        String board = boardName(machine);
        switch (fact) {
            case FAMILY -> { }
            case BOARD_FACT, PROCESSOR_LIMIT -> add(How.READ_DOCUMENT, board, List.of(machine.machine().board()),
                    machine, new Question(fact.text(), fact.cheapestWay()));
            case PROCESSOR, OPERATING_SYSTEM -> add(How.ASK_MACHINE, board, List.of(machine.machine().board(), fact,
                    machine.before()), machine, new Question(fact.text(), fact.cheapestWay()));
            case GENERATION, FORM, CAPACITY, CONTENT, RANKS, CHIP_WIDTH, CHIP_SIZE, STACK, BUFFERING, ERROR_CHECK,
                    CHECK_BITS, RATE, LATENCY, VOLTAGE, ACCESS_TIME, CONTACTS ->
                    ofModules(machine, fact, slots, offers, board);
        }
    }

    private void ofModules(MachinePlan machine, MissingFact fact, Set<String> slots, Map<String, String> offers,
            String board) {
        List<String> own = slots.stream().filter(slot -> !offers.containsKey(slot)).toList();
        slots.stream().map(offers::get).filter(offer -> offer != null).distinct().forEach(offer ->
                add(How.ASK_SUPPLIER, offer, List.of(offer), machine, new Question(fact.text(),
                        "Ask the supplier for the data sheet, and complete the offer.")));
        if (!own.isEmpty() || slots.isEmpty()) {
            String where = own.isEmpty() ? "" : " in " + String.join(", ", own);
            add(How.OPEN, board, List.of(machine.machine().board(), machine.before()), machine,
                    new Question(fact.text() + where, fact.cheapestWay()));
        }
    }

    private String boardName(MachinePlan machine) {
        return survey.fleet().boards().get(machine.machine().board()).name();
    }

    private void add(How how, String subject, List<Object> key, MachinePlan machine, Question question) {
        List<Object> whole = new ArrayList<>(key);
        whole.add(how);
        Group group = groups.computeIfAbsent(whole, none -> new Group(how, subject));
        group.machines.add(machine.machine().tag());
        group.questions.add(question);
        if (how == How.ASK_SUPPLIER) {
            group.offers.add(subject);
        } else {
            group.offers.addAll(bought.getOrDefault(machine.machine().tag(), Map.of()).keySet());
        }
    }

    /** Machines that no plan reaches, because of what was found in the inventory. */
    private void unresolved() {
        Map<AssetTag, List<Finding>> errors = new HashMap<>();
        for (Finding finding : survey.findings()) {
            if (finding.severity() == Severity.ERROR) {
                finding.machine().ifPresent(tag -> errors.computeIfAbsent(tag, none -> new ArrayList<>()).add(finding));
            }
        }
        for (ObservedMachine machine : survey.unresolved()) {
            Optional<Finding> why = errors.getOrDefault(machine.tag(), List.of()).stream().findFirst();
            if (why.isEmpty()) {
                continue;
            }
            String name = (machine.maker() + " " + machine.model()).strip();
            boolean boardUnknown = why.get().code().equals("board-unknown") && !name.isBlank();
            List<Object> key = boardUnknown ? List.of(name, why.get().code()) : List.of(machine.tag());
            Group group = groups.computeIfAbsent(key, none ->
                    new Group(boardUnknown ? How.READ_DOCUMENT : How.OPEN, name.isBlank() ? "unknown model" : name));
            group.machines.add(machine.tag());
            group.questions.add(new Question(why.get().message(), why.get().remedy()));
        }
    }

    private LookAt made(Group group) {
        Money stake = Money.zero(plan.policy().currency());
        for (AssetTag machine : group.machines) {
            for (Map.Entry<String, Money> line : bought.getOrDefault(machine, Map.of()).entrySet()) {
                if (group.offers.contains(line.getKey())) {
                    stake = stake.plus(line.getValue());
                }
            }
        }
        return new LookAt(group.how, group.subject, List.copyOf(group.machines), List.copyOf(group.questions), stake,
                List.copyOf(group.offers));
    }
}
