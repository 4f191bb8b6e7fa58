package slotledger.model.task;

/** Takes reports of long work, and says whether it should stop. Implementations may be called from any thread. */
public interface Progress {

    /** Ignores reports, never cancels. */
    Progress NONE = new Progress() {
        @Override
        public void step(String what, double done) {
            // nobody watches
        }

        @Override
        public boolean isCancelled() {
            return false;
        }
    };

    /**
     * Reports how far the work is.
     *
     * @param what the step under way, a short phrase for people
     * @param done share of this step that is done, 0 to 1; negative where unknown
     */
    void step(String what, double done);

    /** Whether the user wants the work to stop; asked often. */
    boolean isCancelled();

    /** Stops the work where the user asked for it. */
    default void check() {
        if (isCancelled()) {
            throw new CancelledException();
        }
    }
}
