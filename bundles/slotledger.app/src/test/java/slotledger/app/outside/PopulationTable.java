package slotledger.app.outside;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;
import slotledger.testkit.OutsideData;

/** The table of fourteen systems, read in place, and the modules to try it with. */
final class PopulationTable {

    private PopulationTable() {
    }

    static JsonNode table() throws IOException {
        return new ObjectMapper().readTree(OutsideData.file("tables/population.json").toFile()).get("systems");
    }

    static JsonNode system(String name) throws IOException {
        for (JsonNode system : table()) {
            if (system.get("system").asText().contains(name)) {
                return system;
            }
        }
        throw new IllegalArgumentException(name);
    }

    static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(item -> texts.add(item.asText()));
        return texts;
    }

    static List<Integer> numbers(JsonNode list) {
        List<Integer> numbers = new ArrayList<>();
        list.forEach(item -> numbers.add(item.asInt()));
        return numbers;
    }

    /** One rank of chips x8. */
    static ModuleKind registered(Generation generation, int gibibytes, int rate) {
        return ModuleKind.of(generation, Form.DIMM, Capacity.ofGiB(gibibytes)).with(Buffering.REGISTERED)
                .with(ErrorCheck.ECC).with(Rate.of(rate)).withRanks(1).with(ChipWidth.X8)
                .with(ChipSize.ofGbit(gibibytes)).with(Voltage.ofMillivolts(generation == Generation.DDR3 ? 1500
                        : generation == Generation.DDR4 ? 1200 : 1100));
    }

    /** 32 GB in four ranks of chips x4 of 4 Gbit. */
    static ModuleKind loadReduced(int rate) {
        return registered(Generation.DDR4, 32, rate).with(Buffering.LOAD_REDUCED).withRanks(4).with(ChipWidth.X4)
                .with(ChipSize.ofGbit(4));
    }

    static ModuleKind unbuffered(Generation generation, int gibibytes, int rate, ErrorCheck check) {
        return registered(generation, gibibytes, rate).with(Buffering.UNBUFFERED).with(check);
    }
}
