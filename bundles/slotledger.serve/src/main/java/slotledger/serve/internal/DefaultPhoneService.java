package slotledger.serve.internal;

import java.nio.file.Path;
import java.time.Clock;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.app.CardDesk;
import slotledger.app.FleetDesk;
import slotledger.app.WorkDesk;
import slotledger.serve.PhoneServer;
import slotledger.serve.PhoneService;
import slotledger.serve.ServeException;
import slotledger.serve.ServeRequest;
import slotledger.serve.internal.http.Limits;

/** Serves by HTTP. */
@Component
public final class DefaultPhoneService implements PhoneService {

    private final WorkDesk work;
    private final CardDesk cards;
    private final Limits limits;
    private final Clock clock;

    @Activate
    public DefaultPhoneService(@Reference FleetDesk desk, @Reference CardDesk cards) {
        this(desk.work(), cards, Limits.USUAL, Clock.systemUTC());
    }

    /** With other limits and another clock than usual. */
    public DefaultPhoneService(WorkDesk work, CardDesk cards, Limits limits, Clock clock) {
        this.work = work;
        this.cards = cards;
        this.limits = limits;
        this.clock = clock;
    }

    @Override
    public PhoneServer start(ServeRequest request) throws ServeException {
        Path passes = request.project().resolve("phones").resolve("passes.json");
        return RunningServer.start(request, work, cards, passes, limits, clock);
    }
}
