package slotledger.cli.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.serve.PhoneServer;
import slotledger.serve.PhoneService;
import slotledger.serve.ServeException;
import slotledger.serve.ServeRequest;

/** Shows the rounds to phones until it is stopped. */
@Command(
        name = "serve",
        description = "Show the rounds of a project to phones, where technicians tick steps, enter serial numbers and "
                + "say how each machine ended. Runs until it is stopped with Ctrl-C. Without --network only this "
                + "computer can reach it.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger serve school",
            "  slotledger serve school --network 192.168.10.5 --passes passes.html",
            "  slotledger serve school --network planner.school.example --certificate server.p12 "
                    + "--password-file pw.txt",
            "  slotledger serve school --network 192.168.10.5 --new-secret R2"
        })
final class ServeCommand implements Callable<Integer> {

    private static final int LONGEST_DAYS = 60;

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Option(names = "--network", paramLabel = "ADDRESS", description = "Name or address of this computer in the "
            + "network of the phones. Whoever is in that network can reach it then.")
    private String network;

    @Option(names = "--port", paramLabel = "NUMBER", defaultValue = "8447", description = "8447 unless given.")
    private int port;

    @Option(names = "--certificate", paramLabel = "FILE", description = "Certificate of that name, to encrypt: "
            + "PKCS12 (.p12, .pfx) or PEM.")
    private Path certificate;

    @Option(names = "--key", paramLabel = "FILE", description = "Private key (PEM, PKCS8), if it is not in the same "
            + "file.")
    private Path key;

    @Option(names = "--password-file", paramLabel = "FILE", description = "Text file with the password of a PKCS12 "
            + "certificate.")
    private Path passwordFile;

    @Option(names = "--days", paramLabel = "NUMBER", defaultValue = "7", description = "How long new secrets hold, 1 "
            + "to 60 days; 7 unless given.")
    private int days;

    @Option(names = "--new-secret", paramLabel = "ROUND", description = "Give a round a new secret and end the old "
            + "one; may be given again.")
    private Set<String> renew = new LinkedHashSet<>();

    @Option(names = "--passes", paramLabel = "FILE", description = "Write the new passes as a page to print, too.")
    private Path passes;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    private final PhoneService phones;
    private final Console console;

    ServeCommand(PhoneService phones, Console console) {
        this.phones = phones;
        this.console = console;
    }

    @Override
    public Integer call() throws DeskException, InterruptedException {
        try (PhoneServer server = phones.start(request())) {
            if (passes != null) {
                server.writePasses(passes);
            }
            new ServeText(console).print(server, Optional.ofNullable(network), certificate != null,
                    Optional.ofNullable(passes));
            awaitStop(server);
            return ExitCode.OK.number();
        } catch (ServeException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }

    /** Ctrl-C ends the program through its hooks, so the server is closed in one. */
    private static void awaitStop(PhoneServer server) throws InterruptedException {
        Runtime.getRuntime().addShutdownHook(new Thread(server::close, "slotledger phones stop"));
        new CountDownLatch(1).await();
    }

    private ServeRequest request() throws DeskException {
        if (days < 1 || days > LONGEST_DAYS) {
            throw new DeskException(Trouble.INPUT, "--days must be 1 to " + LONGEST_DAYS + ", but is " + days + ".");
        }
        if (certificate == null && (key != null || passwordFile != null)) {
            throw new DeskException(Trouble.INPUT, "--key and --password-file belong to a --certificate.");
        }
        try {
            return new ServeRequest(project, Optional.ofNullable(network), port, certificate(), Duration.ofDays(days),
                    renew);
        } catch (IllegalArgumentException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }

    private Optional<ServeRequest.Certificate> certificate() throws DeskException {
        if (certificate == null) {
            return Optional.empty();
        }
        String password = "";
        if (passwordFile != null) {
            try {
                password = Files.readString(passwordFile, StandardCharsets.UTF_8).strip();
            } catch (IOException problem) {
                throw new DeskException(Trouble.INPUT, "The password in " + passwordFile + " can't be read: "
                        + problem.getMessage(), problem);
            }
        }
        return Optional.of(new ServeRequest.Certificate(certificate, Optional.ofNullable(key), password));
    }
}
