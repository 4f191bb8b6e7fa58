package slotledger.workbench.internal;

import org.eclipse.osgi.util.NLS;

/** The texts on the screen; the properties file beside this class holds them, one for each field. */
public final class Texts extends NLS {

    public static String unknown;

    public static String column_tag;
    public static String column_site;
    public static String column_room;
    public static String column_role;
    public static String column_board;
    public static String column_slots;
    public static String column_total;
    public static String column_target;
    public static String column_after;
    public static String column_state;

    public static String state_unresolved;
    public static String state_no_target;
    public static String state_unread;
    public static String state_on_target;
    public static String state_below;

    public static String summary_nothing_open;
    public static String summary_machines;
    public static String summary_unresolved;
    public static String summary_on_target;
    public static String summary_below;
    public static String summary_cost;
    public static String summary_proven;
    public static String summary_not_proven;
    public static String summary_filtered;
    public static String filter_hint;

    public static String finding_seen;
    public static String finding_expected;
    public static String finding_severity;
    public static String finding_machine;
    public static String finding_place;
    public static String finding_message;
    public static String finding_remedy;

    public static String slot_kept;
    public static String slot_new;
    public static String slot_moved;
    public static String slot_removed;
    public static String slot_fixed;
    public static String slot_empty;
    public static String slot_unread;
    public static String slot_dead;
    public static String slot_present;
    public static String slot_filler;
    public static String slot_nothing;
    public static String slot_unnamed;
    public static String slot_place;

    public static String way_to;
    public static String way_to_shelf;
    public static String way_to_disposal;
    public static String way_from;
    public static String way_from_shelf;
    public static String way_from_order;
    public static String way_machine;

    public static String picture_now;
    public static String picture_before;
    public static String picture_after;
    public static String picture_observed;
    public static String picture_none;

    public static String facts_at_least;
    public static String facts_usable;
    public static String facts_written;

    public static String why_now;
    public static String why_after;
    public static String why_judged;
    public static String why_all_pass;
    public static String why_worst;
    public static String why_plan;
    public static String why_obstacle;
    public static String why_freed_by;
    public static String why_lacks;
    public static String why_missing;
    public static String why_find;
    public static String why_statement;
    public static String why_source;

    public static String job_open;
    public static String job_plan;
    public static String open_choose;
    public static String window_title;
    public static String incomplete_title;
    public static String incomplete_message;
    public static String usage_title;
    public static String usage_message;

    static {
        initializeMessages("slotledger.workbench.internal.texts", Texts.class);
    }

    private Texts() {
    }

    /** The text with values in the places of {0}, {1} and so on. */
    public static String with(String text, Object... values) {
        return bind(text, values);
    }
}
