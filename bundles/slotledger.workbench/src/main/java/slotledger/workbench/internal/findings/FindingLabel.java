package slotledger.workbench.internal.findings;

import java.util.function.Function;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.swt.graphics.Image;
import slotledger.model.finding.Severity;
import slotledger.workbench.internal.Icons;

/** One cell of the table of findings. */
final class FindingLabel extends ColumnLabelProvider {

    private final Function<FindingLine, String> text;
    private final boolean pictured;

    FindingLabel(Function<FindingLine, String> text, boolean pictured) {
        this.text = text;
        this.pictured = pictured;
    }

    @Override
    public String getText(Object element) {
        return text.apply((FindingLine) element);
    }

    @Override
    public Image getImage(Object element) {
        return pictured ? Icons.get(icon(((FindingLine) element).severity())) : null;
    }

    private static String icon(Severity severity) {
        return switch (severity) {
            case ERROR -> Icons.ERROR;
            case WARNING -> Icons.WARNING;
            case NOTE -> Icons.NOTE;
        };
    }
}
