package slotledger.cli.internal;

import java.util.Optional;
import picocli.CommandLine.Option;

/** Which database a team's projects are in, and who connects to it. */
final class TeamOptions {

    @Option(names = "--url", required = true, paramLabel = "ADDRESS",
            description = "Address of the database: jdbc:postgresql://HOST:PORT/DATABASE, with ?sslmode=verify-full "
                    + "behind it where the way to it is not safe. Never with a password.")
    private String url;

    @Option(names = "--user", paramLabel = "NAME",
            description = "User of the database; unless given PGUSER, or the user of this computer.")
    private String user;

    String url() {
        return url;
    }

    Optional<String> user() {
        return Optional.ofNullable(user);
    }
}
