package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * What a command found: once as lines for people, once as facts for programs.
 *
 * @param code  how the command ends
 * @param lines printed one after the other
 * @param facts plain values, lists and maps only
 */
record Answer(ExitCode code, List<Consumer<Console>> lines, Map<String, Object> facts) {

    Answer {
        lines = List.copyOf(lines);
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }

    /** Collects an answer piece by piece. */
    static final class Builder {

        private final List<Consumer<Console>> lines = new ArrayList<>();
        private final Map<String, Object> facts = new LinkedHashMap<>();

        Builder item(String word, String text) {
            lines.add(console -> console.item(word, text));
            return this;
        }

        Builder items(String word, List<String> texts) {
            List<String> copy = List.copyOf(texts);
            lines.add(console -> console.items(word, copy));
            return this;
        }

        /** An item whose text is broken into lines that fit a terminal. */
        Builder wrapped(String word, String text) {
            return items(word, Wrapped.lines(text, Wrapped.WIDTH - Console.INDENT));
        }

        Builder line(String text) {
            lines.add(console -> console.line(text));
            return this;
        }

        /** The lines of another answer, without its facts. */
        Builder lines(Answer other) {
            lines.addAll(other.lines());
            return this;
        }

        Builder fact(String name, Object value) {
            facts.put(name, value);
            return this;
        }

        Answer end(ExitCode code) {
            return new Answer(code, lines, facts);
        }
    }
}
