package slotledger.app.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Project;
import slotledger.app.Survey;
import slotledger.catalog.CatalogException;
import slotledger.catalog.CatalogReader;
import slotledger.catalog.CatalogReading;
import slotledger.catalog.FleetResolver;
import slotledger.catalog.ResolvedFleet;
import slotledger.intake.Intake;
import slotledger.intake.IntakeException;
import slotledger.intake.Known;
import slotledger.intake.Reading;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.SlotContent;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.TableUse;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;
import slotledger.planner.Targets;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** Reads all files of a project. */
final class Surveyor {

    private final Intake intake;
    private final CatalogReader catalogs;
    private final FleetResolver resolver;
    private final MemoryRules rules;

    Surveyor(Intake intake, CatalogReader catalogs, FleetResolver resolver, MemoryRules rules) {
        this.intake = intake;
        this.catalogs = catalogs;
        this.resolver = resolver;
        this.rules = rules;
    }

    Survey survey(Project project, Progress progress) throws DeskException {
        try {
            List<Finding> findings = new ArrayList<>();
            List<TableUse> columns = new ArrayList<>();
            progress.step("Reading the boards", -1);
            CatalogReading catalog = catalogs.read(project.boards());
            findings.addAll(catalog.findings());
            progress.step("Reading the fleet", -1);
            ObservedFleet observed = kept(
                    intake.readFleet(project.inventories(), project.mapping(), progress), columns, findings);
            observed = new Corrections(project).applied(observed, findings);
            progress.step("Looking up boards", -1);
            ResolvedFleet resolved = resolver.resolve(observed, catalog.catalog());
            findings.addAll(resolved.findings());
            progress.step("Reading offers, shelf, policy and choices", -1);
            Market market = project.offers().isEmpty() ? Market.NONE
                    : kept(intake.readOffers(project.offers(), progress), columns, findings);
            Shelf shelf = project.shelves().isEmpty() ? Shelf.EMPTY
                    : kept(intake.readShelf(project.shelves(), progress), columns, findings);
            findings.addAll(intake.compareShelf(project.shelves(), observed, progress));
            Optional<Policy> policy = project.policy().isEmpty() ? Optional.empty()
                    : Optional.of(kept(intake.readPolicy(project.policy().get()), columns, findings));
            Known known = new Known(resolved.fleet(), resolved.unresolved(), market, shelf);
            Choices choices = Choices.NONE;
            if (project.choices().isPresent()) {
                choices = kept(intake.readChoices(project.choices().get(), known), columns, findings);
            }
            choices = new ProjectPins(intake, project).addedTo(choices, known, findings);
            if (!choices.isEmpty()) {
                findings.addAll(new ChoicesCheck(rules, resolved.fleet(), policy).findings(choices));
            }
            progress.step("Looking for what is easily mixed up", -1);
            findings.addAll(new Confusions(rules).findings(resolved.fleet(), market, shelf, progress));
            progress.check();
            return new Survey(project, columns, observed.machines().size(), catalog.catalog().boards(),
                    resolved.fleet(), resolved.unresolved(), market, shelf, policy, choices,
                    new Mutes(project).applied(findings));
        } catch (IntakeException | CatalogException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }

    /**
     * An inventory taken after the work, with boards looked up.
     *
     * @param observed      as it was written
     * @param namingFillers machines in whose slots it names fillers; of all others they are assumed
     */
    record Inventory(ResolvedFleet fleet, ObservedFleet observed, Set<AssetTag> namingFillers) {
    }

    /** Reads an inventory taken after the work. */
    Inventory inventory(List<Path> files, Project project, List<Finding> findings, Progress progress)
            throws DeskException {
        try {
            CatalogReading catalog = catalogs.read(project.boards());
            findings.addAll(catalog.findings());
            Reading<ObservedFleet> reading = intake.readFleet(files, project.mapping(), progress);
            ResolvedFleet resolved = resolver.resolve(reading.value(), catalog.catalog());
            findings.addAll(reading.findings());
            findings.addAll(resolved.findings());
            Set<AssetTag> namingFillers = reading.value().machines().stream()
                    .filter(machine -> machine.slots().stream()
                            .anyMatch(slot -> slot.content() instanceof SlotContent.Filled))
                    .map(ObservedMachine::tag)
                    .collect(Collectors.toSet());
            return new Inventory(resolved, reading.value(), namingFillers);
        } catch (IntakeException | CatalogException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }

    private static <T> T kept(Reading<T> reading, List<TableUse> columns, List<Finding> findings) {
        columns.addAll(reading.columns());
        findings.addAll(reading.findings());
        return reading.value();
    }

    /** What a machine as it is lacks of its role's target. */
    List<String> shortfalls(Survey survey, Machine machine) {
        Setup setup = Setup.of(survey.fleet(), machine);
        return survey.policy().flatMap(policy -> policy.target(machine.role()))
                .map(target -> Targets.shortfalls(target, setup, rules.operate(setup))).orElse(List.of());
    }
}
