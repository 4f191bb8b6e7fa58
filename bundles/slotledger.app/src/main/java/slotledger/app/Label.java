package slotledger.app;

import java.util.List;
import java.util.Objects;
import slotledger.model.family.Family;
import slotledger.model.observed.LabelReading;
import slotledger.model.verdict.MissingFact;

/**
 * What is printed on a module, and what one must still find out.
 *
 * @param reading  part by part
 * @param families that the module can belong to; empty where the label says too little to name a few
 * @param missing  facts that rules ask for and the label doesn't tell, most needed first
 * @param mixups   what the module is easily taken for
 */
public record Label(
        LabelReading reading, List<Family> families, List<MissingFact> missing, List<Mixup> mixups) {

    public Label {
        Objects.requireNonNull(reading, "reading");
        families = List.copyOf(families);
        missing = List.copyOf(missing);
        mixups = List.copyOf(mixups);
    }
}
