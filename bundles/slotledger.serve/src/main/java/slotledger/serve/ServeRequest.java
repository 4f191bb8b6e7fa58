package slotledger.serve;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * How a project is served.
 *
 * @param project     folder of a project with a history
 * @param network     name or address of this computer that phones reach it by; empty serves this computer alone
 * @param port        0 takes any that is free
 * @param certificate empty serves without encryption
 * @param validity    how long new secrets hold
 * @param renew       ids of the rounds that get a new secret though the one they have still holds
 */
public record ServeRequest(
        Path project,
        Optional<String> network,
        int port,
        Optional<Certificate> certificate,
        Duration validity,
        Set<String> renew) {

    private static final int LARGEST_PORT = 65_535;

    public ServeRequest {
        Objects.requireNonNull(project, "project");
        Objects.requireNonNull(network, "network");
        if (port < 0 || port > LARGEST_PORT) {
            throw new IllegalArgumentException("The port (%d) must be 0 to %d.".formatted(port, LARGEST_PORT));
        }
        Objects.requireNonNull(certificate, "certificate");
        if (validity.isNegative() || validity.isZero()) {
            throw new IllegalArgumentException("The validity (%s) of secrets must be positive.".formatted(validity));
        }
        renew = Set.copyOf(renew);
    }

    /**
     * The certificate of the server, with its key.
     *
     * @param file     PKCS12 (.p12, .pfx), or PEM with the certificate first and those that vouch for it behind
     * @param key      PEM file of the private key (PKCS8); empty where it is in the same file
     * @param password of a PKCS12 file; empty without one
     */
    public record Certificate(Path file, Optional<Path> key, String password) {
        public Certificate {
            Objects.requireNonNull(file, "file");
            Objects.requireNonNull(key, "key");
            Objects.requireNonNull(password, "password");
        }

        /** Says nothing of the password. */
        @Override
        public String toString() {
            return "certificate in " + file;
        }
    }
}
