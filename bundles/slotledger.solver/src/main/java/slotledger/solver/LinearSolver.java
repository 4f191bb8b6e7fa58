package slotledger.solver;

/**
 * Solves linear programmes that grow: rows are set once, columns are added between the solves, and each solve begins
 * where the last one ended. It computes in floating point; whoever needs a proof checks its answers in exact
 * arithmetic. The same calls give the same answers on every run.
 */
public interface LinearSolver {

    /** No lower limit. */
    double NO_LOW = Double.NEGATIVE_INFINITY;
    /** No upper limit. */
    double NO_HIGH = Double.POSITIVE_INFINITY;

    /** Begins a programme with these limits of its rows and without columns. */
    Session open(double[] rowLows, double[] rowHighs) throws SolverException;

    /** How a solve ended. */
    enum Outcome {
        /** Values and prices are those of a least cost. */
        LEAST,
        /** No values keep all rows. */
        IMPOSSIBLE,
        /** The solver was stopped or is in numerical trouble; nothing is known. */
        UNKNOWN
    }

    /** One programme. Belongs to one thread. */
    interface Session extends AutoCloseable {

        /**
         * Adds a column and returns its number.
         *
         * @param rows    in rising order, each once
         * @param factors in these rows
         */
        int add(double low, double high, double cost, int[] rows, double[] factors);

        /** Changes the limits of a column. */
        void bound(int column, double low, double high);

        /** Changes the cost of a column. */
        void cost(int column, double cost);

        /** Makes the sum of the costs smallest. */
        Outcome solve() throws SolverException;

        /** By number of column, as the last solve left them. */
        double[] values();

        /**
         * By number of row: how much the least cost grows for each unit that the limits of the row are raised. At most
         * zero for a row that only has an upper limit.
         */
        double[] prices();

        /** Frees what the solver holds. */
        @Override
        void close();
    }
}
