package slotledger.intake.internal.offer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.table.Grid;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;

class OffersTest {

    private static Reading<Market> read(String grid) throws IntakeException {
        return new SpreadsheetOffers(new Grid(grid)).read(Path.of("offers.xlsx"), Progress.NONE);
    }

    private static String show(Offer offer) {
        return offer.id() + ": " + offer.packSize() + " x " + offer.piece() + "; "
                + offer.steps().stream().map(step -> step.fromPacks() + "+ " + step.perPack()).toList()
                + (offer.stock().isPresent() ? " stock " + offer.stock().getAsInt() : "")
                + (offer.leadDays().isPresent() ? " days " + offer.leadDays().getAsInt() : "")
                + offer.validUntil().map(day -> " until " + day).orElse("");
    }

    private static List<String> offers(Reading<Market> reading) {
        return reading.value().offers().stream().map(OffersTest::show).toList();
    }

    private static List<String> codes(Reading<Market> reading) {
        return reading.findings().stream().map(finding -> finding.severity().text() + " " + finding.code() + " "
                + finding.place().row().orElse(0)).toList();
    }

    @Test
    void pricesByQuantityComeFromHeadingsInAnyLanguage() throws IntakeException {
        Reading<Market> reading = read("""
                == Preise
                Lieferant | Art.-Nr. | Artikel | Preis EUR | ab 10 Stk | ab 25 | Lager | Lieferzeit | gültig bis
                Nord | N-1 | 8GB 1Rx8 PC4-2666V-U | 19,90 | 18,50 | 17,00 | 120 | 2-3 Tage | 31.12.2026
                """);
        assertEquals(List.of("Nord/N-1: 1 x 8 GB DDR4-2666 DIMM, 1Rx8, non-ECC, unbuffered; "
                + "[1+ EUR 19.90, 10+ EUR 18.50, 25+ EUR 17.00] stock 120 days 3 until 2026-12-31"), offers(reading));
        assertEquals(List.of("note price-rule-assumed 2"), codes(reading));
    }

    @Test
    void aColumnSaysWhetherPricesHoldForAllPacksOrForFurtherOnesAndWhatTaxIs() throws IntakeException {
        Reading<Market> reading = read("""
                Supplier | Part | Module | Price (EUR) | from 10 | Price rule | Tax percent
                A | P1 | 8GB PC4-2666V-U | 20 | 18 | further packs | 7
                A | P2 | 8GB PC4-2666V-U | 20 | 18 | all packs | -
                A | P3 | 8GB PC4-2666V-U | 20 | 18 | perhaps | lots
                """);
        assertEquals(List.of("FURTHER_PACKS Optional[7 %]", "ALL_PACKS Optional.empty", "ALL_PACKS Optional.empty"),
                reading.value().offers().stream().map(offer -> offer.rule() + " " + offer.tax()).toList());
        // 9 packs at 20.00 and 3 at 18.00; 12 packs at 18.00
        assertEquals(List.of("EUR 234.00", "EUR 216.00"), reading.value().offers().stream().limit(2)
                .map(offer -> offer.total(12).toString()).toList());
        assertEquals(List.of("warning price-rule-not-understood 4", "warning tax-not-understood 4"), codes(reading));
    }

    @Test
    void anOfferMayNameTheMakerOfItsModules() throws IntakeException {
        Reading<Market> reading = read("""
                Supplier | Part | Brand | Module | Price (GBP)
                A | P1 | Farrow Works | 8GB PC4-2666V-U | 20
                A | P2 | - | 8GB PC4-2666V-U | 19
                """);
        assertEquals(List.of(Optional.of("Farrow Works"), Optional.empty()),
                reading.value().offers().stream().map(Offer::maker).toList());
        assertEquals(List.of(), codes(reading));
    }

    @Test
    void rowsOfOnePartArePriceSteps() throws IntakeException {
        Reading<Market> reading = read("""
                Supplier | Part | Module | From quantity | Price (GBP)
                A | P1 | 8GB PC4-2666V-U | 1 | 20
                A | P1 | 8GB PC4-2666V-U | 10 | 18
                A | P1 | 8GB PC4-2666V-U | 10 | 17
                A | P2 | 8GB PC4-2666V-U | 10 | 17
                """);
        assertEquals(List.of("A/P1: 1 x 8 GB DDR4-2666 DIMM, non-ECC, unbuffered; [1+ GBP 20.00, 10+ GBP 18.00]"),
                offers(reading));
        assertEquals(List.of("error duplicate-offer 4", "note price-rule-assumed 2", "error no-price-for-one 5"),
                codes(reading));
    }

    @Test
    void aSheetCanBeASupplierAndColumnsCanDescribeTheModule() throws IntakeException {
        Reading<Market> reading = read("""
                == South
                Prices in PLN
                Symbol | Pojemność | Typ | Format | Taktowanie | ECC | Cena | Opakowanie
                S-1 | 8 GB | DDR4 | SODIMM | 2666 | nie | 89,00 | 2
                """);
        assertEquals(List.of("South/S-1: 2 x 8 GB DDR4-2666 SO-DIMM, non-ECC; [1+ PLN 89.00]"), offers(reading));
    }

    @Test
    void kitsAreCountedOrRefused() throws IntakeException {
        Reading<Market> reading = read("""
                Supplier | Part | Module | Price EUR | Pack size
                A | K1 | 16GB Kit (2x8GB) DDR4-3200 UDIMM non-ECC | 40.00 |
                A | K2 | 16GB kit of 2 DDR4-3200 UDIMM non-ECC | 40.00 |
                A | K3 | 2x8GB DDR4-3200 UDIMM non-ECC | 40.00 | 4
                """);
        assertEquals(List.of("A/K1: 2 x 8 GB DDR4-3200 DIMM, non-ECC, unbuffered; [1+ EUR 40.00]"), offers(reading));
        assertEquals(List.of("error kit-size-ambiguous 3", "error pack-size 4"), codes(reading));
    }

    @Test
    void amountsThatCanBeReadInTwoWaysAreDecidedByTheOthersOrRefused() throws IntakeException {
        assertEquals(List.of("error amount-ambiguous 2", "error price-missing 2"), codes(read("""
                Supplier | Part | Module | Price EUR
                A | 1 | 64GB 2Rx4 PC4-2933Y-R | ~1.234
                """)));
        Reading<Market> reading = read("""
                Supplier | Part | Module | Price EUR
                A | 1 | 64GB 2Rx4 PC4-2933Y-R | ~1.234
                A | 2 | 8GB 1Rx8 PC4-2666V-U | ~19,90
                """);
        assertEquals("EUR 1234.00", reading.value().offers().get(0).perPack(1).toString());
    }

    @Test
    void symbolsNameTheCurrencyAndNothingIsGuessedWithoutOne() throws IntakeException {
        Reading<Market> reading = read("""
                Supplier | Part | Module | Price
                A | 1 | 8GB 1Rx8 PC4-2666V-U | € 12,50
                A | 2 | 8GB 1Rx8 PC4-2666V-U | £1,234.50
                A | 3 | 8GB 1Rx8 PC4-2666V-U | 12.50
                A | 4 | 8GB 1Rx8 PC4-2666V-U | $ 12.50
                """);
        assertEquals(List.of("EUR 12.50", "GBP 1234.50"),
                reading.value().offers().stream().map(offer -> offer.perPack(1).toString()).toList());
        assertEquals(List.of("error currency-missing 4", "error price-missing 4", "error currency-missing 5",
                "error price-missing 5"), codes(reading));
    }

    @Test
    void fillersAreOfferedLikeModules() throws IntakeException {
        Reading<Market> reading = read("""
                Supplier | Part | Module | Price EUR | Pack size
                A | C1 | CRIMM 184-pin continuity module | 3.00 |
                A | C2 | 2 x continuity module 232-pin | 9.00 |
                A | C3 | DIMM airflow blank | 1.50 | 10
                A | M1 | 256MB PC800-45 RDRAM RIMM | 20.00 |
                A | M2 | 8GB 1Rx8 PC4-2666V-U with on-die termination | 12.50 |
                """);
        assertEquals(List.of(
                "A/C1: 1 x 184-pin continuity module; [1+ EUR 3.00]",
                "A/C2: 2 x 232-pin continuity and termination module; [1+ EUR 9.00]",
                "A/C3: 10 x airflow blank; [1+ EUR 1.50]"), offers(reading).subList(0, 3));
        assertEquals("8 GB", reading.value().offers().get(reading.value().offers().size() - 1).piece().capacity()
                .toString());
    }

    @Test
    void termsOfSuppliersMayStandInRowsOrOnASheetOfTheirOwn() throws IntakeException {
        Reading<Market> reading = read("""
                == Offers
                Supplier | Part | Module | Price EUR | Shipping | Free from
                A | 1 | 8GB 1Rx8 PC4-2666V-U | 12.50 | 6.90 | 100
                A | 2 | 4GB 1Rx8 PC4-2666V-U | 12.50 | 7.90 | 100
                == Terms
                Supplier | Shipping EUR | Minimum order EUR
                A | 6.90 | 50
                """);
        assertEquals("Supplier[name=A, shipping=Optional[EUR 6.90], freeFrom=Optional[EUR 100.00], "
                + "minimum=Optional[EUR 50.00]]", reading.value().suppliers().get("A").toString());
        assertEquals(List.of("warning terms-differ 3"), codes(reading));
    }
}
