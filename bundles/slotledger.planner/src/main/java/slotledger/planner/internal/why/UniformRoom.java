package slotledger.planner.internal.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.model.module.Piece;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Lab;
import slotledger.planner.internal.choice.Options;

/** All machines of one board in a room that is kept uniform, one class of which is to be brought on target. */
final class UniformRoom {

    private final List<Options> all;
    private final Lab lab;
    private final Options wanted;

    private UniformRoom(List<Options> all, Lab lab, Options wanted) {
        this.all = all;
        this.lab = lab;
        this.wanted = wanted;
    }

    /** Empty where the class isn't in such a room, or its room has nothing in common and is looked at one by one. */
    static Optional<UniformRoom> of(List<Options> all, Options wanted) {
        int number = all.indexOf(wanted);
        return !wanted.group().isInUniformRoom() ? Optional.empty() : Lab.of(all).stream()
                .filter(lab -> lab.classes().contains(number) && !lab.common(all).isEmpty())
                .map(lab -> new UniformRoom(all, lab, wanted))
                .findFirst();
    }

    boolean has(int group) {
        return lab.classes().contains(group);
    }

    int size() {
        return lab.size(all);
    }

    /** Whether something that all of them can hold brings the class on target. */
    boolean canBeHelped() {
        Set<Map<Piece, Integer>> common = lab.common(all);
        return reaching().stream().anyMatch(each -> common.contains(Lab.contents(each.after())));
    }

    private List<Candidate> reaching() {
        return wanted.candidates().stream().filter(Candidate::onTarget).filter(wanted::mayBe).toList();
    }

    /** The classes of the room, that which is wanted with nothing but what brings it on target. */
    List<Options> onTarget() {
        List<Options> classes = new ArrayList<>();
        for (int number : lab.classes()) {
            Options each = all.get(number);
            classes.add(each == wanted ? each.of(each.group().machines(), reaching()) : each);
        }
        return classes;
    }
}
