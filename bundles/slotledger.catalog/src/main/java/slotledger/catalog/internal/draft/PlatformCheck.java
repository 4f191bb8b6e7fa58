package slotledger.catalog.internal.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.catalog.Platform;
import slotledger.model.finding.Finding;
import slotledger.model.module.Generation;
import slotledger.model.observed.BoardReport;

/** Holds what firmware says of a model against what its processors' memory controller can do. */
final class PlatformCheck {

    private PlatformCheck() {
    }

    /** The platform of most machines of a model that name a processor that is known. */
    static Optional<Platform> of(List<BoardReport> model) {
        return model.stream().map(report -> Platform.of(report.machine().processor())).flatMap(Optional::stream)
                .collect(Collectors.groupingBy(platform -> platform, Collectors.counting())).entrySet().stream()
                .max((one, two) -> Long.compare(one.getValue(), two.getValue()) != 0
                        ? Long.compare(one.getValue(), two.getValue())
                        : two.getKey().name().compareTo(one.getKey().name()))
                .map(entry -> entry.getKey());
    }

    /** What can't be, as findings. */
    static void compare(List<BoardReport> model, ModelFacts facts, Platform platform, List<Finding> findings) {
        for (Generation generation : facts.generations()) {
            if (!platform.generations().contains(generation)) {
                findings.add(DraftMaker.finding(model.get(0), "firmware-against-platform",
                        "The firmware says %s, but processors of the family %s (%s) take %s.".formatted(
                                generation.text(), platform.name(), platform.source(), platform.generations()),
                        "memory that the processor takes", "Look at the label of one module."));
            }
        }
        int processors = model.stream().mapToInt(report -> report.machine().processors().orElse(1)).max().orElse(1);
        facts.largestTotal().filter(total -> !platform.largestTotal().times(processors).atLeast(total))
                .ifPresent(total -> findings.add(DraftMaker.finding(model.get(0), "firmware-against-platform",
                        "The firmware says that the board takes %s, but %d processor(s) of the family %s (%s) take %s."
                                .formatted(total, processors, platform.name(), platform.source(),
                                        platform.largestTotal().times(processors)),
                        "no more than the processors take", "Look up the board's document.")));
        int sockets = facts.labels().size() - facts.soldered().size();
        int most = platform.channels() * platform.modulesPerChannel() * Math.max(1, processors);
        if (sockets > most) {
            findings.add(DraftMaker.finding(model.get(0), "firmware-against-platform",
                    "The firmware lists %d sockets, but %d processor(s) of the family %s (%s) drive %d at most."
                            .formatted(sockets, processors, platform.name(), platform.source(), most),
                    "no more than the processors drive", "Count the slots; firmware may list some that aren't there."));
        }
    }

    /** What a person is told of the platform in a draft, one comment a line. */
    static List<String> comments(Platform platform) {
        List<String> lines = new ArrayList<>();
        lines.add("The processors' memory controller (%s): %d channels, at most %d modules in each.".formatted(
                platform.source(), platform.channels(), platform.modulesPerChannel()));
        lines.add("It takes %s, at most %s a processor; ECC: %s.".formatted(platform.generations().stream().sorted()
                .map(Generation::text).collect(Collectors.joining(", ")), platform.largestTotal(),
                platform.ecc().text()));
        lines.add("Highest rate: " + platform.rates().entrySet().stream().sorted(Map.Entry.comparingByKey())
                .map(rate -> "%s with %d in a channel".formatted(rate.getValue(), rate.getKey()))
                .collect(Collectors.joining(", ")) + ".");
        return lines;
    }
}
