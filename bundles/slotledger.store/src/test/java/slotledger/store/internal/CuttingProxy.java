package slotledger.store.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicInteger;

/** A way to a server that can lose the answer to a commit: the server has it, and the program never hears of it. */
final class CuttingProxy implements AutoCloseable {

    private static final int BUFFER = 64 * 1024;

    private final ServerSocket door;
    private final int target;
    private final AtomicInteger cuts = new AtomicInteger();
    private volatile int toCut;

    CuttingProxy(int target) throws IOException {
        this.target = target;
        this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        start(this::accept);
    }

    int port() {
        return door.getLocalPort();
    }

    /** The answers to the next so many commits are lost. */
    void loseAnswers(int commits) {
        toCut = commits;
    }

    int lost() {
        return cuts.get();
    }

    private void accept() {
        while (!door.isClosed()) {
            try {
                Socket client = door.accept();
                Socket server = new Socket(InetAddress.getLoopbackAddress(), target);
                Line line = new Line(client, server);
                start(line::up);
                start(line::down);
            } catch (IOException closed) {
                return;
            }
        }
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "cutting proxy");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() throws IOException {
        door.close();
    }

    /** One connection. */
    private final class Line {

        private final Socket client;
        private final Socket server;
        private volatile boolean cut;

        Line(Socket client, Socket server) {
            this.client = client;
            this.server = server;
        }

        void up() {
            pass(client, server, true);
        }

        void down() {
            pass(server, client, false);
        }

        private void pass(Socket from, Socket to, boolean up) {
            byte[] buffer = new byte[BUFFER];
            try (from; to) {
                InputStream in = from.getInputStream();
                OutputStream out = to.getOutputStream();
                for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                    if (up && toCut > 0
                            && new String(buffer, 0, read, StandardCharsets.ISO_8859_1).contains("COMMIT")) {
                        toCut--;
                        cut = true;
                    }
                    if (!up && cut) {
                        // The server has answered, so it has committed.
                        cuts.incrementAndGet();
                        return;
                    }
                    out.write(buffer, 0, read);
                }
            } catch (IOException gone) {
                // Ends like the connection does.
            }
        }
    }
}
