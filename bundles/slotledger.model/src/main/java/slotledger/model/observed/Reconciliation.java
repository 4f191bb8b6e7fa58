package slotledger.model.observed;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.AssetTag;

/**
 * A fleet put together from several sources, with all that was compared.
 *
 * @param fleet           the outcome
 * @param comparisons     fact by fact, by machine in the fleet's order
 * @param withoutFirmware machines that only a spreadsheet lists; none where there is no firmware at all
 * @param withoutSheet    machines that only firmware lists; none where there is no spreadsheet at all
 */
public record Reconciliation(ObservedFleet fleet, List<Comparison> comparisons, List<AssetTag> withoutFirmware,
        List<AssetTag> withoutSheet) {

    public Reconciliation {
        Objects.requireNonNull(fleet, "fleet");
        comparisons = List.copyOf(comparisons);
        withoutFirmware = List.copyOf(withoutFirmware);
        withoutSheet = List.copyOf(withoutSheet);
    }

    /** Those of one outcome. */
    public List<Comparison> of(Comparison.Outcome outcome) {
        return comparisons.stream().filter(each -> each.outcome() == outcome).toList();
    }
}
