package slotledger.intake.internal.offer;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import slotledger.intake.internal.table.TableRow;
import slotledger.model.module.Piece;
import slotledger.model.trade.PriceRule;
import slotledger.model.unit.Money;
import slotledger.model.unit.Percent;

/**
 * One row of an offer; rows of the same supplier and part are price steps of one offer.
 *
 * @param prices price of one pack by the quantity it holds from
 * @param rule   for which packs each of them holds; empty where nobody says
 */
record OfferLine(
        TableRow row,
        String supplier,
        String part,
        Optional<String> maker,
        Piece piece,
        int packSize,
        SortedMap<Integer, Money> prices,
        Optional<PriceRule> rule,
        Optional<Percent> tax,
        OptionalInt stock,
        OptionalInt leadDays,
        Optional<LocalDate> priceDate,
        Optional<LocalDate> validUntil) {}
