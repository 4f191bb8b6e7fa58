package slotledger.intake.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import slotledger.intake.Intake;
import slotledger.intake.IntakeException;
import slotledger.intake.Known;
import slotledger.intake.Reading;
import slotledger.intake.internal.choices.ChoicesReader;
import slotledger.intake.internal.firmware.FirmwareFiles;
import slotledger.intake.internal.firmware.FirmwareInventory;
import slotledger.intake.internal.firmware.ShelfImages;
import slotledger.intake.internal.fleet.FleetMerger;
import slotledger.intake.internal.fleet.SpreadsheetInventory;
import slotledger.intake.internal.join.FleetJoin;
import slotledger.intake.internal.offer.MarketMerger;
import slotledger.intake.internal.offer.SpreadsheetOffers;
import slotledger.intake.internal.policy.PolicyReader;
import slotledger.intake.internal.receipt.ReceiptReader;
import slotledger.intake.internal.report.FindingsWorkbook;
import slotledger.intake.internal.report.ReconciliationCsv;
import slotledger.intake.internal.sheet.SheetFile;
import slotledger.intake.internal.sheet.SheetFiles;
import slotledger.intake.internal.shelf.ShelfReader;
import slotledger.intake.internal.table.Mapping;
import slotledger.intake.internal.template.Templates;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.LabelReader;
import slotledger.intake.internal.value.ModuleReading;
import slotledger.intake.internal.value.ModuleText;
import slotledger.intake.spi.InventoryReader;
import slotledger.intake.spi.OfferSource;
import slotledger.model.delivery.Receipt;
import slotledger.model.finding.Finding;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.observed.BoardReport;
import slotledger.model.observed.LabelReading;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.Reconciliation;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;

/** Hands each file to the reader that knows its kind, and joins what they say. */
@Component
public final class DefaultIntake implements Intake {

    private final List<InventoryReader> inventories;
    private final List<OfferSource> offers;
    private final SheetFile sheets = new SheetFiles();

    /** Readers come in the order of the service registry, lowest ranking first. */
    @Activate
    public DefaultIntake(
            @Reference(cardinality = ReferenceCardinality.AT_LEAST_ONE, policyOption = ReferencePolicyOption.GREEDY)
                    List<InventoryReader> inventories,
            @Reference(cardinality = ReferenceCardinality.AT_LEAST_ONE, policyOption = ReferencePolicyOption.GREEDY)
                    List<OfferSource> offers) {
        this.inventories = reversed(inventories);
        this.offers = reversed(offers);
    }

    /** With our own readers only, for use without a framework. */
    public static DefaultIntake plain() {
        return new DefaultIntake(List.of(new SpreadsheetInventory(), new FirmwareInventory()),
                List.of(new SpreadsheetOffers()));
    }

    private static <T> List<T> reversed(List<T> lowestFirst) {
        List<T> highestFirst = new ArrayList<>(lowestFirst);
        Collections.reverse(highestFirst);
        return List.copyOf(highestFirst);
    }

    @Override
    public Reading<ObservedFleet> readFleet(List<Path> files, Optional<Path> mapping, Progress progress)
            throws IntakeException {
        Reading<Reconciliation> joined = reconcile(files, mapping, progress);
        return new Reading<>(joined.value().fleet(), joined.columns(), joined.findings());
    }

    @Override
    public Reading<Reconciliation> reconcile(List<Path> files, Optional<Path> mapping, Progress progress)
            throws IntakeException {
        Mapping known = mapping.isPresent() ? Mapping.read(mapping.get()) : Mapping.NONE;
        FleetMerger sheetMerger = new FleetMerger();
        FleetMerger tables = new FleetMerger();
        sheetMerger.add(known.findings());
        boolean anyTable = false;
        boolean anySheet = false;
        for (Path file : files) {
            progress.check();
            InventoryReader reader = inventories.stream().filter(candidate -> candidate.canRead(file)).findFirst()
                    .orElseThrow(() -> unknownKind(file, "an inventory as .xlsx, .xls or .csv, or firmware tables"));
            boolean isTable = reader.ground() == Ground.FIRMWARE;
            anyTable |= isTable;
            anySheet |= !isTable;
            (isTable ? tables : sheetMerger).add(reader.read(file, mapping, progress));
        }
        sheetMerger.add(known.unused(sheetMerger.uses()));
        Reading<ObservedFleet> sheet = sheetMerger.merged();
        Reading<ObservedFleet> table = tables.merged();
        if (!anyTable || !anySheet) {
            return alone(anyTable ? table : sheet, anyTable ? sheet.findings() : List.of());
        }
        Reconciliation joined = new FleetJoin(known.trust()).join(sheet.value(), table.value());
        List<Finding> findings = new ArrayList<>(sheet.findings());
        findings.addAll(table.findings());
        findings.addAll(joined.fleet().findings());
        ObservedFleet fleet = new ObservedFleet(joined.fleet().machines(), findings);
        return new Reading<>(new Reconciliation(fleet, joined.comparisons(), joined.withoutFirmware(),
                joined.withoutSheet()), sheet.columns(), findings);
    }

    @Override
    public Reading<List<BoardReport>> readBoards(List<Path> files, Progress progress) throws IntakeException {
        List<BoardReport> reports = new ArrayList<>();
        for (Path file : files) {
            if (FirmwareFiles.isFirmware(file)) {
                reports.addAll(FirmwareInventory.boards(file, progress));
            }
        }
        return new Reading<>(List.copyOf(reports), List.of(), List.of());
    }

    private static Reading<Reconciliation> alone(Reading<ObservedFleet> only, List<Finding> more) {
        List<Finding> findings = new ArrayList<>(more);
        findings.addAll(only.findings());
        ObservedFleet fleet = new ObservedFleet(only.value().machines(), findings);
        return new Reading<>(new Reconciliation(fleet, List.of(), List.of(), List.of()), only.columns(), findings);
    }

    @Override
    public Reading<Market> readOffers(List<Path> files, Progress progress) throws IntakeException {
        MarketMerger merger = new MarketMerger();
        for (Path file : files) {
            progress.check();
            OfferSource source = offers.stream().filter(candidate -> candidate.canRead(file)).findFirst()
                    .orElseThrow(() -> unknownKind(file, "offers as .xlsx, .xls or .csv"));
            merger.add(source.read(file, progress));
        }
        return merger.merged();
    }

    private static IntakeException unknownKind(Path file, String expected) {
        return new IntakeException(Doubt.error("unknown-kind-of-file", "No reader knows this kind of file.", expected,
                "Save it as one of these, or add a reader for it.")
                .at(Place.ofFile(String.valueOf(file.getFileName())), ""), null);
    }

    @Override
    public Reading<Shelf> readShelf(List<Path> files, Progress progress) throws IntakeException {
        List<Path> lists = files.stream().filter(file -> !FirmwareFiles.isFirmware(file)).toList();
        Reading<Shelf> listed = new ShelfReader(sheets).read(lists, progress);
        if (lists.size() == files.size()) {
            return listed;
        }
        ShelfImages images = new ShelfImages();
        for (Path file : files) {
            if (!lists.contains(file)) {
                images.read(file, progress);
            }
        }
        Map<Piece, Integer> pieces = new LinkedHashMap<>(listed.value().pieces());
        images.pieces().forEach((piece, count) -> pieces.merge(piece, count, Integer::sum));
        List<Finding> findings = new ArrayList<>(listed.findings());
        findings.addAll(images.findings());
        return new Reading<>(new Shelf(pieces), listed.columns(), findings);
    }

    @Override
    public List<Finding> compareShelf(List<Path> files, ObservedFleet fleet, Progress progress)
            throws IntakeException {
        ShelfImages images = new ShelfImages();
        for (Path file : files) {
            if (FirmwareFiles.isFirmware(file)) {
                images.read(file, progress);
            }
        }
        return images.alsoIn(fleet);
    }

    @Override
    public Reading<List<Receipt>> readReceipts(List<Path> files, Progress progress) throws IntakeException {
        return new ReceiptReader(sheets).read(files, progress);
    }

    @Override
    public Reading<Policy> readPolicy(Path file) throws IntakeException {
        return new PolicyReader(sheets).read(file);
    }

    @Override
    public Reading<Choices> readChoices(Path file, Known known) throws IntakeException {
        return ChoicesReader.read(file, known);
    }

    @Override
    public Reading<Optional<ModuleKind>> readModule(String text) {
        ModuleReading reading = ModuleText.read(text, Optional.empty());
        List<Doubt> doubts = new ArrayList<>(reading.doubts());
        Optional<ModuleKind> kind = reading.facts().kind(doubts);
        if (!reading.rest().isEmpty()) {
            doubts.add(reading.restDoubt());
        }
        return new Reading<>(kind, List.of(), doubts.stream().map(doubt -> doubt.at(Place.NOWHERE, text)).toList());
    }

    @Override
    public LabelReading readLabel(String text) {
        return LabelReader.read(text);
    }

    @Override
    public void writeFindings(List<Path> files, List<Finding> findings, Path target) throws IntakeException {
        List<Path> lists = files.stream().filter(file -> !FirmwareFiles.isFirmware(file)).toList();
        new FindingsWorkbook(sheets).write(lists, findings, target);
    }

    @Override
    public void writeReconciliation(Reconciliation reconciliation, Path target) throws IntakeException {
        ReconciliationCsv.write(reconciliation, target);
    }

    @Override
    public List<Path> writeTemplates(Path folder) throws IntakeException {
        return new Templates().write(folder);
    }
}
