package slotledger.intake;

import slotledger.model.finding.Finding;

/** A file can't be read at all; the finding says which, what was expected and what to do. */
public final class IntakeException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Finding finding;

    public IntakeException(Finding finding, Throwable cause) {
        super(finding.toString(), cause);
        this.finding = finding;
    }

    public Finding finding() {
        return finding;
    }
}
