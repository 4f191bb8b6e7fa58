package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.module.Piece;
import slotledger.model.source.Place;
import slotledger.planner.internal.choice.Lab;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.Choice;

/** Says why rooms that should be kept uniform are not. */
final class RoomRemarks {

    /** All codes of these remarks begin so. */
    static final String CODE = "room-not-uniform";

    private final Choice choice;
    private final List<Options> options;

    private RoomRemarks(Choice choice) {
        this.choice = choice;
        this.options = choice.options();
    }

    static List<Finding> of(Choice choice) {
        RoomRemarks remarks = new RoomRemarks(choice);
        List<Finding> found = new ArrayList<>();
        for (Lab lab : Lab.of(remarks.options)) {
            if (lab.common(remarks.options).isEmpty()) {
                found.add(remarks.nothingInCommon(lab));
            } else if (remarks.isMixed(lab)) {
                found.add(remarks.outOfReach(lab));
            }
        }
        return found;
    }

    private boolean isMixed(Lab lab) {
        return lab.classes().stream()
                .flatMap(group -> IntStream.range(0, options.get(group).candidates().size())
                        .filter(number -> choice.count(group, number) > 0)
                        .mapToObj(number -> Lab.contents(options.get(group).candidates().get(number).after())))
                .distinct()
                .count() > 1;
    }

    private Finding nothingInCommon(Lab lab) {
        return remark(lab, CODE,
                "nothing that is on offer, owned or pulled brings all of them to their targets with the"
                        + " same modules, and keeps to the rules and the pins",
                "They are planned one by one. Offer modules that suit all of them, or take the room out of the"
                        + " choices.");
    }

    private Finding outOfReach(Lab lab) {
        Map<Piece, Integer> first = lab.common(options).iterator().next();
        return remark(lab, CODE + "-out-of-reach",
                ("stock, budget, pins or the number of machines that may be opened do not reach for all of them at once"
                        + " (all could hold %s, for example)").formatted(Lab.text(first)),
                "None of them is changed unless it is pinned. Allow more, or take the room out of the choices: then"
                        + " they"
                        + " are planned one by one.");
    }

    private Finding remark(Lab lab, String code, String why, String remedy) {
        String now = lab.classes().stream()
                .collect(Collectors.groupingBy(group -> Lab.text(Lab.contents(options.get(group).group().now())),
                        TreeMap::new, Collectors.summingInt(group -> options.get(group).group().size())))
                .entrySet().stream()
                .map(held -> held.getValue() + " with " + held.getKey())
                .collect(Collectors.joining("; "));
        return new Finding(Severity.WARNING, code, Place.NOWHERE, Optional.of(lab.first(options).tag()), "",
                "The %d machines of board %s in %s can't be kept uniform: %s. They hold now: %s.".formatted(
                        lab.size(options), lab.board(), lab.first(options).where(), why, now), "", remedy);
    }
}
