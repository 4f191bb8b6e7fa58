package slotledger.intake.internal.table;

/** Gives tests of other packages mappings without a file. */
public final class MappingTexts {

    private MappingTexts() {
    }

    public static Mapping parse(String file, String text) {
        return Mapping.parse(file, text);
    }
}
