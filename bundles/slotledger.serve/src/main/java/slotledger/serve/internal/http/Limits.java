package slotledger.serve.internal.http;

import java.time.Duration;

/**
 * How much a server takes from one side. The numbers are generous for people with phones and small for everything else;
 * common practice, no source.
 *
 * @param wrongPerAddress wrong secrets from one address within the time of trying
 * @param wrongPerRound   wrong secrets for one round from all addresses within that time
 * @param trying          that time
 * @param perMinute       requests from one address
 * @param connections     from one address at once
 * @param allConnections  from all addresses at once
 * @param bodyBytes       largest body of a request
 * @param events          most entries in one request
 * @param idle            silence after which a connection ends
 * @param wholeRequest    time in which a request must be there as a whole
 */
public record Limits(
        int wrongPerAddress,
        int wrongPerRound,
        Duration trying,
        int perMinute,
        int connections,
        int allConnections,
        int bodyBytes,
        int events,
        Duration idle,
        Duration wholeRequest) {

    public static final Limits USUAL = new Limits(10, 60, Duration.ofMinutes(15), 1_200, 24, 400, 256 * 1024, 200,
            Duration.ofSeconds(30), Duration.ofSeconds(20));
}
