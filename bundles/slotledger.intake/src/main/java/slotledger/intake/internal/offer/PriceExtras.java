package slotledger.intake.internal.offer;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Words;
import slotledger.model.finding.Finding;
import slotledger.model.trade.PriceRule;
import slotledger.model.unit.Percent;

/** Reads what a row says of its prices beside the amounts: how steps are meant, and tax. */
final class PriceExtras {

    private static final Set<String> ALL = Set.of("all", "allpacks", "allunits", "alle", "allepackungen", "allemengen");
    private static final Set<String> FURTHER = Set.of("further", "furtherpacks", "furtherunits", "incremental",
            "graduated", "weitere", "weiterepackungen", "mehrmenge");

    private final Consumer<Finding> findings;

    PriceExtras(Consumer<Finding> findings) {
        this.findings = findings;
    }

    Optional<PriceRule> rule(TableRow row) {
        String text = row.text(Field.PRICE_RULE);
        String key = Texts.fold(text).toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        if (text.isEmpty() || Words.sayNothing(text)) {
            return Optional.empty();
        }
        if (!ALL.contains(key) && !FURTHER.contains(key)) {
            findings.accept(Doubt.warning("price-rule-not-understood",
                    "It is not clear for which packs the prices hold; they were taken to hold for all.",
                    "all packs, or further packs", "Correct the cell.").at(row.place(Field.PRICE_RULE), text));
        }
        return Optional.of(FURTHER.contains(key) ? PriceRule.FURTHER_PACKS : PriceRule.ALL_PACKS);
    }

    Optional<Percent> tax(TableRow row) {
        String text = row.text(Field.TAX).replace("%", "").replace(',', '.').strip();
        if (text.isEmpty() || Words.sayNothing(text)) {
            return Optional.empty();
        }
        if (!text.matches("\\d{1,2}(\\.\\d{1,3})?")) {
            findings.accept(Doubt.warning("tax-not-understood",
                    "This is not a percentage; the tax of the policy is used.", "a percentage such as 19",
                    "Correct the cell.").at(row.place(Field.TAX), text));
            return Optional.empty();
        }
        return Optional.of(new Percent(new BigDecimal(text)));
    }
}
