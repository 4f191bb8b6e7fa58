package slotledger.intake.internal.firmware;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import slotledger.intake.spi.InventoryReader;
import slotledger.intake.spi.InventoryReaderContract;

class FirmwareInventoryContractTest extends InventoryReaderContract {

    @Override
    protected InventoryReader reader() {
        return new FirmwareInventory();
    }

    @Override
    protected String exampleName() {
        return "firmware.txt";
    }

    @Override
    protected Path example(Path target) throws IOException {
        return Files.writeString(target, Listing.of("A | 8 GB | RIMM | DDR4 | 2133 MT/s | 64 | 72",
                "A | empty | DIMM").toString());
    }

    @Override
    protected Set<Integer> rowsOfExample() {
        return Set.of();
    }
}
