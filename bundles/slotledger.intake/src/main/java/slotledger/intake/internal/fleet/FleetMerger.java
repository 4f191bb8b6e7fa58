package slotledger.intake.internal.fleet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slotledger.intake.Reading;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Texts;
import slotledger.model.finding.Finding;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.TableUse;
import slotledger.model.source.Place;

/** Makes one fleet of several files; a tag that comes twice is a machine once and a finding once. */
public final class FleetMerger {

    private final List<ObservedMachine> machines = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<TableUse> uses = new ArrayList<>();
    private final Map<String, ObservedMachine> byTag = new HashMap<>();
    private final Map<String, ObservedMachine> bySerial = new HashMap<>();

    /** Adds what one file says. */
    public void add(Reading<ObservedFleet> reading) {
        findings.addAll(reading.findings());
        uses.addAll(reading.columns());
        for (ObservedMachine machine : reading.value().machines()) {
            ObservedMachine first = byTag.putIfAbsent(key(machine.tag().value()), machine);
            if (first != null) {
                findings.add(Doubt.error("duplicate-asset-tag",
                        "The asset tag stands already at %s; this row was left out."
                        .formatted(first.place()), "every asset tag once",
                        "Find out which row is right and delete the other, or correct its tag.")
                        .at(place(machine, reading, Field.ASSET_TAG), machine.tag().value()).about(machine.tag()));
                continue;
            }
            machines.add(machine);
            checkSerial(machine, reading);
        }
    }

    private void checkSerial(ObservedMachine machine, Reading<ObservedFleet> reading) {
        if (machine.serial().isEmpty()) {
            return;
        }
        ObservedMachine first = bySerial.putIfAbsent(key(machine.serial()), machine);
        if (first != null) {
            findings.add(Doubt.warning("duplicate-serial",
                    "Machine %s at %s has the same serial number; both were kept."
                    .formatted(first.tag(), first.place()), "every serial number once",
                    "Read the serial numbers off both machines.")
                    .at(place(machine, reading, Field.SERIAL), machine.serial()).about(machine.tag()));
        }
    }

    private static String key(String text) {
        return Texts.tidy(Texts.withoutInvisible(text)).toLowerCase(Locale.ROOT);
    }

    private static Place place(ObservedMachine machine, Reading<ObservedFleet> reading, Field field) {
        int row = machine.place().row().orElse(0);
        Optional<TableUse.ColumnUse> column = reading.columns().stream()
                .filter(use -> use.sheet().equals(machine.place().sheet()) && use.headerRow() < row)
                .reduce((one, later) -> later).stream().flatMap(use -> use.columns().stream())
                .filter(use -> use.field().equals(field.id())).findFirst();
        return column.map(known -> machine.place().atColumn(known.column(), known.heading())).orElse(machine.place());
    }

    /** Adds findings that belong to no file in particular. */
    public void add(List<Finding> more) {
        findings.addAll(more);
    }

    public List<TableUse> uses() {
        return List.copyOf(uses);
    }

    public Reading<ObservedFleet> merged() {
        return new Reading<>(new ObservedFleet(machines, findings), uses, findings);
    }
}
