package slotledger.firmware.spd;

import java.util.List;
import java.util.Optional;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.fact.Facts;
import slotledger.firmware.fact.Problem;

/**
 * What the SPD image of a module says.
 *
 * @param facts    those of {@link SpdFacts}
 * @param profiles settings beyond the base rate
 * @param problems wrong checksums and contradictions; a right checksum only says that the bytes are as written
 */
public record SpdModule(Facts facts, List<Profile> profiles, List<Problem> problems) {

    public SpdModule {
        profiles = List.copyOf(profiles);
        problems = List.copyOf(problems);
    }

    public <T> Optional<T> get(Fact<T> fact) {
        return facts.get(fact);
    }
}
