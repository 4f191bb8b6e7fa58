package slotledger.model.plan;

import java.util.Objects;
import slotledger.model.unit.Money;

/**
 * What a careful person with a spreadsheet would get who takes each machine's cheapest upgrade by itself.
 *
 * @param onTarget machines on target after the work, without those that are left alone
 * @param weight   machines on target after the work, weighted, and those that are left alone among them
 * @param opened   machines that are opened
 * @param goods    all modules and fillers bought, tax left out
 * @param delivery what suppliers charge for delivery
 * @param labour   work on all machines
 */
public record BoughtAlone(long onTarget, long weight, long opened, Money goods, Money delivery, Money labour) {

    public BoughtAlone {
        Objects.requireNonNull(goods, "goods");
        Objects.requireNonNull(delivery, "delivery");
        Objects.requireNonNull(labour, "labour");
    }

    public Money total() {
        return goods.plus(delivery).plus(labour);
    }
}
