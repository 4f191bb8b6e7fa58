package slotledger.workbench.internal.slots;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slotledger.model.machine.AssetTag;
import slotledger.workbench.internal.session.Opened;

/** "PC-014 · North / Lab 2 · Orrin D410". */
final class MachineHeading {

    private MachineHeading() {
    }

    static String of(Opened opened, AssetTag tag) {
        Optional<String> known = opened.machine(tag).map(machine -> line(
                tag, machine.where().toString(), opened.survey().fleet().boardOf(machine).name()));
        return known.or(() -> opened.unresolved(tag).map(machine -> line(
                tag, machine.where().toString(), machine.maker() + " " + machine.model()))).orElse(tag.value());
    }

    private static String line(AssetTag tag, String where, String board) {
        return Stream.of(tag.value(), where, board.strip()).filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" · "));
    }
}
