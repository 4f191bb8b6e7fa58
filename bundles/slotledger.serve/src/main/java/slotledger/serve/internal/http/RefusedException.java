package slotledger.serve.internal.http;

/** A request that is not answered as asked; the sentence is for the technician and says nothing of the inside. */
final class RefusedException extends Exception {

    private static final long serialVersionUID = 1L;

    private final int status;

    RefusedException(int status, String sentence) {
        super(sentence);
        this.status = status;
    }

    /** Of HTTP. */
    int status() {
        return status;
    }
}
