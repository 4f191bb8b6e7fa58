package slotledger.model.family;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slotledger.model.module.Buffering;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/**
 * Modules that share connector, width and law: "288-pin DDR4 DIMM".
 *
 * @param id           stable id, such as ddr4-dimm
 * @param name         as a person says it
 * @param generations  memory technologies; several where they share everything else
 * @param form         mechanical form
 * @param bufferings   what modules of the family are sold with; empty where the question makes no sense
 * @param pins         contacts; empty where there are none or their number is not known
 * @param faces        how the contacts on both faces belong together
 * @param notch        where the notch is, in words
 * @param words        data words a module carries side by side: 2 half channels of DDR5
 * @param dataBits     of all words together; empty where the board decides, as with soldered chips
 * @param checkBits    beside each word where a module has check bits; several where several are sold
 * @param channels     memory channels one module carries
 * @param voltages     all supply voltages modules of the family are made for
 * @param sureVoltages those at which every module of the family works
 * @param label        what stands before the number in a module's name: "PC4-"
 * @param grades       rates, ascending
 * @param accessTimes  grades in nanoseconds, fastest first
 * @param smallest     usual module
 * @param largest      usual module
 * @param standards    documents that define the family
 * @param remark       what else is worth knowing; may be empty
 * @param sources      who says so, for each fact there is
 */
public record Family(
        String id,
        String name,
        Set<Generation> generations,
        Form form,
        Set<Buffering> bufferings,
        OptionalInt pins,
        Faces faces,
        String notch,
        int words,
        OptionalInt dataBits,
        List<Integer> checkBits,
        int channels,
        List<Voltage> voltages,
        Set<Voltage> sureVoltages,
        String label,
        List<Grade> grades,
        List<AccessTime> accessTimes,
        Capacity smallest,
        Capacity largest,
        String standards,
        String remark,
        Map<FamilyFact, Source> sources) {

    public Family {
        generations = Set.copyOf(generations);
        Objects.requireNonNull(form, "form");
        bufferings = Set.copyOf(bufferings);
        Objects.requireNonNull(pins, "pins");
        Objects.requireNonNull(faces, "faces");
        Objects.requireNonNull(notch, "notch");
        Objects.requireNonNull(dataBits, "dataBits");
        checkBits = List.copyOf(checkBits);
        voltages = List.copyOf(voltages);
        sureVoltages = Set.copyOf(sureVoltages);
        Objects.requireNonNull(label, "label");
        grades = List.copyOf(grades);
        accessTimes = List.copyOf(accessTimes);
        Objects.requireNonNull(standards, "standards");
        Objects.requireNonNull(remark, "remark");
        sources = Map.copyOf(sources);
        if (id.isBlank() || name.isBlank() || generations.isEmpty() || words < 1 || channels < 1) {
            throw new IllegalArgumentException("The family %s must have id, name, generation, words and channels."
                    .formatted(id));
        }
        if (!voltages.containsAll(sureVoltages)) {
            throw new IllegalArgumentException("The sure voltages %s of family %s must be among its voltages %s."
                    .formatted(sureVoltages, id, voltages));
        }
        if (smallest.compareTo(largest) > 0) {
            throw new IllegalArgumentException("The smallest module of family %s (%s) must not exceed the largest (%s)."
                    .formatted(id, smallest, largest));
        }
    }

    /** Data bits towards one memory channel; empty where the board decides. */
    public OptionalInt channelBits() {
        return dataBits.isPresent() ? OptionalInt.of(dataBits.getAsInt() / channels) : dataBits;
    }

    /** Data bits of one word. */
    public OptionalInt wordBits() {
        return dataBits.isPresent() ? OptionalInt.of(dataBits.getAsInt() / words) : dataBits;
    }

    /** The grade of this rate. */
    public Optional<Grade> grade(Rate rate) {
        return grades.stream().filter(grade -> grade.rate().equals(rate)).findFirst();
    }

    /** Who says so; empty where the family has no such fact. */
    public Optional<Source> source(FamilyFact fact) {
        return Optional.ofNullable(sources.get(fact));
    }
}
