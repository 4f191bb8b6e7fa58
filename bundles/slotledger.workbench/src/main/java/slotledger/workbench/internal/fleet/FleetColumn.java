package slotledger.workbench.internal.fleet;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import slotledger.model.unit.Capacity;
import slotledger.workbench.internal.Texts;

/** A column of the fleet's grid: heading, text, order, and how wide it is at first. */
public enum FleetColumn {
    TAG(Texts.column_tag, 77, row -> row.tag().value()),
    SITE(Texts.column_site, 105, row -> row.where().site()),
    ROOM(Texts.column_room, 75, row -> row.where().room()),
    ROLE(Texts.column_role, 70, FleetRow::role),
    BOARD(Texts.column_board, 120, FleetRow::board),
    SLOTS(Texts.column_slots, 140, FleetRow::slots),
    TOTAL(Texts.column_total, 78, row -> text(row.total(), Texts.unknown), FleetRow::total),
    TARGET(Texts.column_target, 68, row -> text(row.target(), ""), FleetRow::target),
    AFTER(Texts.column_after, 68, row -> text(row.after(), ""), FleetRow::after),
    STATE(Texts.column_state, 150, row -> row.state().toString(), Comparator.comparing(FleetRow::state));

    private final String heading;
    private final int width;
    private final Function<FleetRow, String> text;
    private final Comparator<FleetRow> order;

    FleetColumn(String heading, int width, Function<FleetRow, String> text) {
        this(heading, width, text, Comparator.comparing(text, NaturalOrder.INSTANCE));
    }

    FleetColumn(String heading, int width, Function<FleetRow, String> text,
            Function<FleetRow, Optional<Capacity>> capacity) {
        this(heading, width, text, Comparator.comparingLong(row ->
                capacity.apply(row).map(Capacity::kibibytes).orElse(-1L)));
    }

    FleetColumn(String heading, int width, Function<FleetRow, String> text, Comparator<FleetRow> order) {
        this.heading = heading;
        this.width = width;
        this.text = text;
        this.order = order;
    }

    public String heading() {
        return heading;
    }

    /** In pixels of a display at 100 %; where there is room for more, each column gets its share. */
    public int width() {
        return width;
    }

    public String text(FleetRow row) {
        return text.apply(row);
    }

    /** Capacities by size, all else as texts with numbers by their value; unknown before known. */
    public Comparator<FleetRow> order() {
        return order;
    }

    /** Whether its texts are amounts, which stand at the right. */
    public boolean isAmount() {
        return this == TOTAL || this == TARGET || this == AFTER;
    }

    private static String text(Optional<Capacity> capacity, String otherwise) {
        return capacity.map(Capacity::toString).orElse(otherwise);
    }
}
