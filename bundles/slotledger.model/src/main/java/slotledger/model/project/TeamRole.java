package slotledger.model.project;

import java.util.Locale;

/** What a person of a team may do with a shared project; the database itself sees to it. */
public enum TeamRole {
    COORDINATOR("do everything"),
    PROCUREMENT("bring in offers; write orders and receipts; read everything"),
    TECHNICIAN("write what happens at the machines; read everything"),
    READER("read everything");

    private final String text;

    TeamRole(String text) {
        this.text = text;
    }

    /** "coordinator", as on the command line. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it may do, in words that go on after "may". */
    public String text() {
        return text;
    }
}
