package slotledger.catalog.internal.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.catalog.Platform;
import slotledger.catalog.internal.platform.PlatformFile;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.module.Generation;
import slotledger.model.observed.BoardReport;

/** Holds what firmware says of a model against what its processors' memory controller can do. */
final class PlatformCheck {

    private PlatformCheck() {
    }

    /** The platform of most machines of a model that name a processor that is known. */
    static Optional<Platform> of(List<BoardReport> model) {
        return model.stream().map(report -> PlatformFile.find(report.machine().processor())).flatMap(Optional::stream)
                .collect(Collectors.groupingBy(platform -> platform, Collectors.counting())).entrySet().stream()
                .max((one, two) -> Long.compare(one.getValue(), two.getValue()) != 0
                        ? Long.compare(one.getValue(), two.getValue())
                        : two.getKey().name().compareTo(one.getKey().name()))
                .map(entry -> entry.getKey());
    }

    /** What can't be, as findings. */
    static void compare(List<BoardReport> model, ModelFacts facts, Platform platform, List<Finding> findings) {
        for (Generation generation : facts.generations()) {
            if (platform.generations().stream().noneMatch(known -> isMeant(generation, known))) {
                findings.add(note(model.get(0),
                        "The firmware says %s, but processors of the family %s (%s) take %s.".formatted(
                                generation.text(), platform.name(), platform.source(), platform.generations()),
                        "memory that the processor takes", "Look at the label of one module."));
            }
        }
        int processors = model.stream().mapToInt(report -> report.machine().processors().orElse(1)).max().orElse(1);
        facts.largestTotal().filter(total -> !platform.largestTotal().times(processors).atLeast(total))
                .ifPresent(total -> findings.add(note(model.get(0),
                        "The firmware says that the board takes %s, but %d processor(s) of the family %s (%s) take %s."
                                .formatted(total, processors, platform.name(), platform.source(),
                                        platform.largestTotal().times(processors)),
                        "no more than the processors take", "Look up the board's document.")));
        int sockets = facts.labels().size() - facts.soldered().size();
        int most = platform.channels() * platform.modulesPerChannel() * Math.max(1, processors);
        if (sockets > most) {
            findings.add(note(model.get(0),
                    "The firmware lists %d sockets, but %d processor(s) of the family %s (%s) drive %d at most."
                            .formatted(sockets, processors, platform.name(), platform.source(), most),
                    "no more than the processors drive", "Count the slots; firmware may list some that aren't there."));
        }
    }

    /** SMBIOS has one word for LPDDR4 and LPDDR4X, and one for LPDDR5 and LPDDR5X: DSP0134, section 7.18.2. */
    private static boolean isMeant(Generation told, Generation known) {
        return told == known || told == Generation.LPDDR4 && known == Generation.LPDDR4X
                || told == Generation.LPDDR5 && known == Generation.LPDDR5X;
    }

    private static Finding note(BoardReport report, String message, String expected, String remedy) {
        Finding finding = DraftMaker.finding(report, "firmware-against-platform", message, expected, remedy);
        return new Finding(Severity.NOTE, finding.code(), finding.place(), finding.machine(), finding.seen(),
                finding.message(), finding.expected(), finding.remedy());
    }

    /** What a person is told of the platform in a draft, one comment a line. */
    static List<String> comments(Platform platform) {
        List<String> lines = new ArrayList<>();
        lines.add("Memory controller of %s (%s): %d channels, at most %d module%s in each.".formatted(platform.name(),
                platform.source(), platform.channels(), platform.modulesPerChannel(),
                platform.modulesPerChannel() == 1 ? "" : "s"));
        lines.add("It takes %s, at most %s a processor; ECC: %s.".formatted(platform.generations().stream().sorted()
                .map(Generation::text).collect(Collectors.joining(", ")), platform.largestTotal(),
                platform.ecc().text()));
        lines.add("Highest rate: " + platform.rates().entrySet().stream().sorted(Map.Entry.comparingByKey())
                .map(rate -> "%s with %d in a channel".formatted(rate.getValue(), rate.getKey()))
                .collect(Collectors.joining(", ")) + ".");
        return lines;
    }
}
