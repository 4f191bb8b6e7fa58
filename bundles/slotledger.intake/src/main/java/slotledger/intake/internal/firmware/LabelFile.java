package slotledger.intake.internal.firmware;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Optional;
import slotledger.intake.internal.join.KindMerge;
import slotledger.intake.internal.value.ModuleText;
import slotledger.intake.internal.value.Texts;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;

/**
 * What somebody read off the label of a module, in a file beside its image.
 *
 * @param name of the file
 * @param text as written there
 * @param kind what it means; empty where it tells no capacity
 */
record LabelFile(String name, String text, Optional<ModuleKind> kind) {

    private static final String ENDING = ".label.txt";
    private static final long LONGEST = 10_000;

    static boolean isOne(String place) {
        return place.endsWith(ENDING);
    }

    /** The label beside an image; none where there is no such file, or the image is in an archive. */
    static Optional<LabelFile> of(String place) {
        Path image = Path.of(place);
        String name = String.valueOf(image.getFileName());
        int dot = name.lastIndexOf('.');
        Path label = image.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ENDING);
        try {
            if (!Files.isRegularFile(label) || Files.size(label) > LONGEST) {
                return Optional.empty();
            }
            String text = Texts.tidy(new String(Files.readAllBytes(label), StandardCharsets.UTF_8));
            return Optional.of(new LabelFile(label.getFileName().toString(), text,
                    ModuleText.read(text, Optional.empty()).facts().kind(new ArrayList<>())));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** Whether nothing on the label is against what the image says; of a label that tells no capacity nobody knows. */
    boolean agrees(ModuleKind image) {
        return kind.isEmpty() || KindMerge.merge(SlotContent.of(image), SlotContent.of(kind.get())).isPresent();
    }
}
