package slotledger.app.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import slotledger.model.project.Part;

/** Which part of a project a file is, by its usual name. */
final class PartNames {

    private static final Set<String> SHEETS = Set.of("xlsx", "xls", "csv");
    private static final Set<String> SHELVES = Set.of("xlsx", "xls", "csv", "zip");
    private static final Set<String> POLICIES = Set.of("xlsx", "xls", "csv", "yaml", "yml", "txt");
    private static final Set<String> CHOICES = Set.of("yaml", "yml", "txt");
    private static final Set<String> TEXTS = Set.of("txt", "yaml", "yml", "csv");

    /** Files and folders of firmware tables are inventories too. */
    private static final String FIRMWARE = "firmware";

    private PartNames() {
    }

    /** Empty where the file is none of the project's; boards are folders, firmware and shelf may be. */
    static Optional<Part> partOf(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (name.startsWith(FIRMWARE)) {
            return Optional.of(Part.FLEET);
        }
        return Stream.of(Part.values()).filter(part -> name.startsWith(part.id()) && isOfIts(part, file)).findFirst();
    }

    private static boolean isOfIts(Part part, Path file) {
        return switch (part) {
            case BOARDS -> Files.isDirectory(file);
            case FLEET, OFFERS -> endsIn(SHEETS, file);
            case SHELF -> endsIn(SHELVES, file) || Files.isDirectory(file);
            case POLICY -> endsIn(POLICIES, file);
            case CHOICES -> endsIn(CHOICES, file);
            case MAPPING -> endsIn(TEXTS, file);
        };
    }

    private static boolean endsIn(Set<String> endings, Path file) {
        String name = file.getFileName().toString();
        return Files.isRegularFile(file)
                && endings.contains(name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
    }
}
