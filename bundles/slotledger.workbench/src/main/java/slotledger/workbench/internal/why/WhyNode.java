package slotledger.workbench.internal.why;

import java.util.List;
import java.util.Objects;

/**
 * One statement of why, with finer ones below.
 *
 * @param text     a sentence
 * @param source   who says so; may be empty
 * @param children finer statements
 */
public record WhyNode(String text, String source, List<WhyNode> children) {

    public WhyNode {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(source, "source");
        children = List.copyOf(children);
    }

    /** The sentence and who says so. */
    public String inFull() {
        return source.isEmpty() ? text : text + "\n" + source;
    }
}
