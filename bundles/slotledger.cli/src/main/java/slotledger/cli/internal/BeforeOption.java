package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.plan.Plan;

/** An earlier plan to begin with. */
final class BeforeOption {

    @Option(
            names = "--before",
            paramLabel = "PLAN",
            description = "Folder or plan.json of an earlier plan. Of plans that are equal in all else the one that "
                    + "changes the fewest machines of it is made, and sheet \"What changed\" of the order workbook "
                    + "says what is different.")
    private Path plan;

    /** The plan's folder or file. */
    Optional<Path> path() {
        return Optional.ofNullable(plan);
    }

    /** The survey with the plan. */
    static Survey in(Survey survey, Path plan, FleetDesk desk) throws DeskException {
        Plan earlier = desk.earlier(plan);
        if (survey.policy().isPresent() && !survey.policy().get().currency().equals(earlier.policy().currency())) {
            throw new DeskException(Trouble.INPUT, "The earlier plan %s counts in %s, the policy in %s. Plan without "
                    .formatted(plan, earlier.policy().currency(), survey.policy().get().currency()) + "--before.");
        }
        return survey.since(Optional.of(earlier));
    }
}
