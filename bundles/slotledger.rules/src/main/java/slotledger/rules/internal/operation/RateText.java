package slotledger.rules.internal.operation;

import java.util.ArrayList;
import java.util.List;
import slotledger.model.board.RateLimit;

/** The conditions of a rate limit in words. */
final class RateText {

    private RateText() {
    }

    /** Whether it holds for all modules. */
    static boolean isPlain(RateLimit limit) {
        return limit.modulesPerChannel().isEmpty() && limit.buffering().isEmpty() && limit.ranks().isEmpty()
                && limit.voltage().isEmpty();
    }

    /** "2 registered modules with up to 2 ranks at 1.35 V". */
    static String of(RateLimit limit, int modules) {
        List<String> words = new ArrayList<>();
        words.add(limit.modulesPerChannel().isPresent() ? Integer.toString(modules) : "any");
        limit.buffering().ifPresent(buffering -> words.add(buffering.text()));
        words.add(modules == 1 && limit.modulesPerChannel().isPresent() ? "module" : "modules");
        limit.ranks().ifPresent(ranks -> words.add("with " + ranks + (ranks == 1 ? " rank" : " ranks")));
        limit.voltage().ifPresent(voltage -> words.add("at " + voltage));
        return String.join(" ", words);
    }
}
