package slotledger.model.project;

/** Is told of changes to a project, on a thread of the store. */
public interface ProjectListener {

    /**
     * There are new entries, by whomever.
     *
     * @param last number of the last one
     */
    void changed(long last);

    /**
     * Whether there are any can't be seen at the moment.
     *
     * @param why a sentence for people
     */
    default void away(String why) {
    }

    /** It can be seen again; what was changed meanwhile is told by {@link #changed}. */
    default void back() {
    }
}
