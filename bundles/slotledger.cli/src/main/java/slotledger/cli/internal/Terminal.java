package slotledger.cli.internal;

import java.io.Console;

/** Whether standard output is a terminal. */
final class Terminal {

    private Terminal() {}

    /**
     * From Java 22 on a console is there even in a pipe, and says itself whether it is a terminal; on older ones it is
     * there only on a terminal.
     */
    static boolean isAttached() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException older) {
            return true;
        } catch (ReflectiveOperationException refused) {
            return false;
        }
    }
}
