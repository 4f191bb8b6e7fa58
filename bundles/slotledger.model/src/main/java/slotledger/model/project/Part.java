package slotledger.model.project;

import java.util.Locale;

/** What a project consists of; each part has versions of its own. */
public enum Part {
    FLEET("fleet"),
    MAPPING("mapping"),
    BOARDS("boards"),
    OFFERS("offers"),
    SHELF("shelf"),
    POLICY("policy"),
    CHOICES("choices");

    private final String id;

    Part(String id) {
        this.id = id;
    }

    /** How the part is called in files and on the command line, and how the names of its files begin. */
    public String id() {
        return id;
    }

    /** The part of that id. */
    public static Part of(String id) {
        return valueOf(id.toUpperCase(Locale.ROOT));
    }
}
