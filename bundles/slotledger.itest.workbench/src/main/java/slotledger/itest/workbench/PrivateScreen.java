package slotledger.itest.workbench;

import com.sun.jna.Library;
import com.sun.jna.Native;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;

/** An X server of the tests' own, so that no window appears on anybody's desktop and none is needed. */
final class PrivateScreen implements AutoCloseable {

    /** The part of the C library that tells GTK, which asks getenv, where its screen is. */
    interface Environment extends Library {
        int setenv(String name, String value, int overwrite);
    }

    private final Process server;

    private PrivateScreen(Process server) {
        this.server = server;
    }

    /** Starts Xvfb and lets this process's windows open there. Fails where Xvfb isn't installed. */
    static PrivateScreen open() throws IOException {
        Process server = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1600x1000x24",
                "-nolisten", "tcp").redirectError(ProcessBuilder.Redirect.DISCARD).start();
        BufferedReader out = new BufferedReader(
                new InputStreamReader(server.getInputStream(), StandardCharsets.US_ASCII));
        Runtime.getRuntime().addShutdownHook(new Thread(server::destroy));
        String number = out.readLine();
        if (number == null) {
            throw new IOException("Xvfb ended without naming its display.");
        }
        Environment environment = Native.load("c", Environment.class);
        environment.setenv("DISPLAY", ":" + number.strip(), 1);
        environment.setenv("GDK_BACKEND", "x11", 1);
        environment.setenv("NO_AT_BRIDGE", "1", 1);
        return new PrivateScreen(server);
    }

    @Override
    public void close() {
        server.destroy();
    }
}
