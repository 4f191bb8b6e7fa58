package slotledger.model.project;

/** An eye on a project, until it is closed. */
public interface Watch extends AutoCloseable {

    /** Nothing is told after this. */
    @Override
    void close();
}
