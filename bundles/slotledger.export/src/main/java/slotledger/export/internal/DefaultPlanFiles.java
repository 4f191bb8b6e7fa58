package slotledger.export.internal;

import java.nio.file.Path;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.export.ExportException;
import slotledger.export.PlanFiles;
import slotledger.export.internal.arrival.ArrivalBook;
import slotledger.export.internal.close.AssetList;
import slotledger.export.internal.close.CloseBook;
import slotledger.export.internal.curve.CurveBook;
import slotledger.export.internal.difference.DifferenceBook;
import slotledger.export.internal.json.PlanJson;
import slotledger.export.internal.matrix.MatrixBook;
import slotledger.export.internal.pdf.ClosePdf;
import slotledger.export.internal.proof.ProofBook;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Settlement;
import slotledger.model.difference.Difference;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Plan;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.Proof;

/** Plan files as JSON, proofs and matrices as workbooks. */
@Component
public final class DefaultPlanFiles implements PlanFiles {

    @Activate
    public DefaultPlanFiles() {
    }

    @Override
    public void writePlan(Plan plan, Path file) throws ExportException {
        new PlanJson().write(plan, file);
    }

    @Override
    public Plan readPlan(Path file) throws ExportException {
        return new PlanJson().read(file);
    }

    @Override
    public void writeProof(Proof proof, Path file) throws ExportException {
        new ProofBook(proof).write(file);
    }

    @Override
    public void writeDifference(Difference difference, Path file) throws ExportException {
        new DifferenceBook(difference).write(file);
    }

    @Override
    public void writeArrivals(Delivery delivery, Path file) throws ExportException {
        new ArrivalBook(delivery, delivery.now(), Optional.empty()).write(file);
    }

    @Override
    public void writeArrivals(Settlement settled, Path file) throws ExportException {
        Difference changed = Difference.of(settled.before(), settled.plan());
        new ArrivalBook(settled.delivery(), settled.plan(), Optional.of(changed)).write(file);
    }

    @Override
    public void writeMatrix(BoardMatrix matrix, Path file) throws ExportException {
        new MatrixBook(matrix).write(file);
    }

    @Override
    public void writeCurve(BudgetCurve curve, String title, Path file) throws ExportException {
        new CurveBook(curve, title).write(file);
    }

    @Override
    public void writeCloseReport(CloseOut close, Path file) throws ExportException {
        new ClosePdf(close).write(file);
    }

    @Override
    public void writeCloseBook(CloseOut close, Path file) throws ExportException {
        new CloseBook(close).write(file);
    }

    @Override
    public void writeAssets(CloseOut close, Path file) throws ExportException {
        new AssetList(close).write(file);
    }
}
