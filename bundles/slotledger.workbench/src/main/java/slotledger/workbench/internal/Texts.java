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

    public static String order_no_plan;
    public static String order_nothing;
    public static String order_to_pay;
    public static String order_tax;
    public static String order_budget;
    public static String order_delivery_free;
    public static String order_delivery;
    public static String order_supplier;
    public static String order_days;
    public static String order_line;
    public static String order_all_packs;
    public static String order_further_packs;
    public static String order_for;
    public static String order_more;
    public static String order_spares;
    public static String order_step;
    public static String order_part;
    public static String order_module;
    public static String order_packs;
    public static String order_modules;
    public static String order_per_pack;
    public static String order_total;
    public static String order_machines;
    public static String order_lead;
    public static String order_valid;

    public static String plan_what;
    public static String plan_wanted;
    public static String plan_result;
    public static String plan_of;
    public static String plan_none;
    public static String plan_money;
    public static String plan_targets;
    public static String plan_binds;
    public static String plan_next_money;
    public static String plan_without;
    public static String plan_proof;
    public static String plan_goods;
    public static String plan_delivery;
    public static String plan_tax;
    public static String plan_against_budget;
    public static String plan_at_most;
    public static String plan_no_limit;
    public static String plan_cost_centre;
    public static String plan_labour;
    public static String plan_total;
    public static String plan_alone;
    public static String plan_alone_is;
    public static String plan_leftovers;
    public static String plan_leftovers_are;
    public static String plan_any_role;
    public static String plan_same_channels;
    public static String plan_no_machine;
    public static String plan_on_target;
    public static String plan_weight;
    public static String plan_machines;
    public static String plan_step_is;
    public static String plan_weight_bound;
    public static String plan_no_more_than;
    public static String plan_cost_bound;
    public static String plan_no_less_than;
    public static String plan_proven;
    public static String plan_gap;
    public static String plan_cut;
    public static String plan_found_by;

    public static String write_choose;
    public static String job_write;
    public static String write_done_title;
    public static String write_done;
    public static String write_open;
    public static String write_close;
    public static String write_replace_title;
    public static String write_replace;

    public static String finding_none;
    public static String finding_counts;
    public static String finding_filter;

    public static String curve_none;
    public static String curve_empty;
    public static String curve_summary;
    public static String curve_point;
    public static String curve_best;
    public static String curve_at_most;
    public static String curve_across;
    public static String curve_upwards;
    public static String curve_asked;
    public static String job_curve;

    public static String work_no_history;
    public static String work_no_plan;
    public static String work_reading;
    public static String work_choose;
    public static String work_tag;
    public static String work_not_found;
    public static String work_several;
    public static String work_summary;
    public static String work_ended;
    public static String work_window;
    public static String work_round;
    public static String work_place;
    public static String work_memory;
    public static String work_state;
    public static String work_is;
    public static String work_deviation;
    public static String work_serial;
    public static String work_words;
    public static String work_begin;
    public static String work_done;
    public static String work_note;
    public static String work_differently;
    public static String work_failed;
    public static String work_put_back;
    public static String job_record;
    public static String job_work;

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
