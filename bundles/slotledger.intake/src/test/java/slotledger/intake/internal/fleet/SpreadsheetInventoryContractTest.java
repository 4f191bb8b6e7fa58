package slotledger.intake.internal.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import slotledger.intake.spi.InventoryReader;
import slotledger.intake.spi.InventoryReaderContract;

class SpreadsheetInventoryContractTest extends InventoryReaderContract {

    @Override
    protected InventoryReader reader() {
        return new SpreadsheetInventory();
    }

    @Override
    protected String exampleName() {
        return "fleet.csv";
    }

    @Override
    protected Path example(Path target) throws IOException {
        return Files.writeString(target, "Our fleet\nAsset tag;Model;RAM\nA1;K10;2x4GB\n;K10;8GB\nTotal;;16 GB\n");
    }

    @Override
    protected Set<Integer> rowsOfExample() {
        return Set.of(3, 4, 5);
    }
}
