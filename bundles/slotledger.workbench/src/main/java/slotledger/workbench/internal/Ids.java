package slotledger.workbench.internal;

/** Every id that plugin.xml and the code must agree on. */
public final class Ids {

    public static final String PERSPECTIVE = "slotledger.workbench.perspective";
    public static final String ORDERING = "slotledger.workbench.ordering";

    public static final String HANDS_ON = "slotledger.workbench.handsOn";

    public static final String FLEET = "slotledger.workbench.fleet";
    public static final String FINDINGS = "slotledger.workbench.findings";
    public static final String SLOTS = "slotledger.workbench.slots";
    public static final String WHY = "slotledger.workbench.why";
    public static final String PLAN_PART = "slotledger.workbench.planPart";
    public static final String CURVE = "slotledger.workbench.curve";
    public static final String ORDER = "slotledger.workbench.order";
    public static final String ROUNDS = "slotledger.workbench.rounds";
    public static final String JOB = "slotledger.workbench.job";

    public static final String OPEN_PROJECT = "slotledger.workbench.openProject";
    public static final String PLAN = "slotledger.workbench.plan";
    public static final String WORK_OUT_CURVE = "slotledger.workbench.workOutCurve";
    public static final String PLAN_BUDGET = "slotledger.workbench.planBudget";
    public static final String WRITE = "slotledger.workbench.write";

    /** Widgets carry their name under this key, for tests and tools. */
    public static final String WIDGET = "slotledger.widget";
    /** A painted widget carries under this key what it shows, in words. */
    public static final String WORDS = "slotledger.words";
    public static final String FLEET_FILTER = "fleet.filter";
    public static final String FLEET_SUMMARY = "fleet.summary";
    public static final String FLEET_GRID = "fleet.grid";
    public static final String FINDINGS_FILTER = "findings.filter";
    public static final String FINDINGS_SUMMARY = "findings.summary";
    public static final String FINDINGS_TABLE = "findings.table";
    public static final String FINDINGS_SENTENCE = "findings.sentence";
    public static final String SLOTS_CANVAS = "slots.canvas";
    public static final String SLOTS_HEADING = "slots.heading";
    public static final String WHY_SENTENCE = "why.sentence";
    public static final String WHY_TREE = "why.tree";
    public static final String PLAN_SUMMARY = "plan.summary";
    public static final String PLAN_TREE = "plan.tree";
    public static final String PLAN_SENTENCE = "plan.sentence";
    public static final String CURVE_SUMMARY = "curve.summary";
    public static final String CURVE_CANVAS = "curve.canvas";
    public static final String CURVE_SENTENCE = "curve.sentence";
    public static final String ORDER_SUMMARY = "order.summary";
    public static final String ORDER_TREE = "order.tree";
    public static final String ORDER_SENTENCE = "order.sentence";

    public static final String WORK_TAG = "work.tag";
    public static final String WORK_SUMMARY = "work.summary";
    public static final String WORK_TREE = "work.tree";
    public static final String WORK_SENTENCE = "work.sentence";
    public static final String JOB_HEADING = "job.heading";
    public static final String JOB_STATE = "job.state";
    /** Followed by the step's number. */
    public static final String JOB_STEP = "job.step.";
    /** Followed by the slot. */
    public static final String JOB_SERIAL = "job.serial.";
    public static final String JOB_WORDS = "job.words";
    public static final String JOB_NOTE = "job.note";
    /** Followed by the state. */
    public static final String JOB_BECOMES = "job.becomes.";

    private Ids() {
    }
}
