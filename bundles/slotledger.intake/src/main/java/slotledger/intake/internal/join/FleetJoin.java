package slotledger.intake.internal.join;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Texts;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.observed.Comparison;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.Reconciliation;
import slotledger.model.observed.Trust;

/**
 * Joins the machines of spreadsheets with what their firmware says. A file of firmware belongs to the machine whose
 * asset tag or serial number it is named by, else to the one whose serial number is in it. Where sources differ, the
 * order of trust decides and a finding names both; nothing is joined silently.
 */
public final class FleetJoin {

    private final Trust trust;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Comparison> comparisons = new ArrayList<>();
    private final List<ObservedMachine> alone = new ArrayList<>();

    public FleetJoin(Trust trust) {
        this.trust = trust;
    }

    /** The findings of the fleet are those of the joining alone. */
    public Reconciliation join(ObservedFleet sheets, ObservedFleet firmware) {
        Map<AssetTag, ObservedMachine> found = match(sheets, firmware);
        List<ObservedMachine> joined = new ArrayList<>();
        List<AssetTag> withoutFirmware = new ArrayList<>();
        for (ObservedMachine machine : sheets.machines()) {
            ObservedMachine table = found.get(machine.tag());
            if (table == null) {
                withoutFirmware.add(machine.tag());
                joined.add(machine);
            } else {
                joined.add(new MachineJoin(trust, comparisons::add, findings::add).join(machine, table));
            }
        }
        List<AssetTag> withoutSheet = new ArrayList<>();
        for (ObservedMachine machine : alone) {
            withoutSheet.add(machine.tag());
            joined.add(machine);
        }
        return new Reconciliation(new ObservedFleet(joined, findings), comparisons, withoutFirmware, withoutSheet);
    }

    private Map<AssetTag, ObservedMachine> match(ObservedFleet sheets, ObservedFleet firmware) {
        Map<String, ObservedMachine> byTag = new HashMap<>();
        Map<String, Optional<ObservedMachine>> bySerial = new HashMap<>();
        for (ObservedMachine machine : sheets.machines()) {
            byTag.put(key(machine.tag().value()), machine);
            if (!machine.serial().isBlank()) {
                bySerial.merge(key(machine.serial()), Optional.of(machine), (one, two) -> Optional.empty());
            }
        }
        Map<AssetTag, ObservedMachine> found = new LinkedHashMap<>();
        for (ObservedMachine table : firmware.machines()) {
            String name = key(table.tag().value());
            Optional<ObservedMachine> named = Optional.ofNullable(byTag.get(name))
                    .or(() -> bySerial.getOrDefault(name, Optional.empty()));
            Optional<ObservedMachine> numbered = table.serial().isBlank() ? Optional.empty()
                    : bySerial.getOrDefault(key(table.serial()), Optional.empty());
            if (named.isPresent() && numbered.isPresent() && !named.get().tag().equals(numbered.get().tag())) {
                findings.add(twoMachines(table, named.get(), numbered.get()));
                continue;
            }
            Optional<ObservedMachine> meant = named.or(() -> numbered);
            if (meant.isEmpty()) {
                findings.add(Doubt.warning("firmware-without-row",
                        "No spreadsheet lists this machine, by the file's name or by its serial number.",
                        "a row with this asset tag or serial number",
                        "Add the machine to the inventory, or name the file by its tag.")
                        .at(table.place(), table.serial()).about(table.tag()));
                alone.add(table);
            } else if (found.putIfAbsent(meant.get().tag(), table) != null) {
                findings.add(Doubt.error("firmware-twice",
                        "There is another file of this machine: %s. This one was left out."
                        .formatted(found.get(meant.get().tag()).place()), "one file a machine",
                        "Delete the older one.").at(table.place(), "").about(meant.get().tag()));
            }
        }
        return found;
    }

    private static Finding twoMachines(ObservedMachine table, ObservedMachine named, ObservedMachine numbered) {
        return Doubt.error("firmware-of-another",
                "The file is named by machine %s, but the serial number in it is that of machine %s (%s); it was"
                        .formatted(named.tag(), numbered.tag(), numbered.place()) + " left out.",
                "the name of the machine it was taken on", "Find out which machine it is of, and rename the file.")
                .at(table.place(), table.serial()).about(named.tag());
    }

    private static String key(String text) {
        return Texts.tidy(Texts.withoutInvisible(text)).toLowerCase(Locale.ROOT);
    }
}
