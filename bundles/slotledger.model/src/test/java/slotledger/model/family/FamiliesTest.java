package slotledger.model.family;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.module.Buffering;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

class FamiliesTest {

    @Test
    void everyGenerationAndEveryFormBelongsToAFamily() {
        for (Generation generation : Generation.values()) {
            assertTrue(Families.all().stream().anyMatch(each -> each.generations().contains(generation)),
                    generation.text());
        }
        for (Form form : Form.values()) {
            assertTrue(Families.all().stream().anyMatch(each -> each.form() == form), form.text());
        }
    }

    @Test
    void noTwoFamiliesShareGenerationFormAndBuffering() {
        Set<List<Object>> seen = new HashSet<>();
        for (Family family : Families.all()) {
            Set<Buffering> bufferings =
                    family.bufferings().isEmpty() ? Set.of(Buffering.values()) : family.bufferings();
            for (Generation generation : family.generations()) {
                for (Buffering buffering : bufferings) {
                    assertTrue(seen.add(List.of(generation, family.form(), buffering)), family.id());
                    assertSame(family, Families.of(generation, family.form(), Optional.of(buffering)).orElseThrow());
                }
            }
        }
    }

    @Test
    void whatAFamilyStatesHasASource() {
        for (Family family : Families.all()) {
            Set<FamilyFact> facts = family.sources().keySet();
            assertTrue(facts.contains(FamilyFact.VOLTS) && facts.contains(FamilyFact.SIZES), family.id());
            assertEquals(family.pins().isPresent(), facts.contains(FamilyFact.PINS), family.id());
            assertEquals(family.dataBits().isPresent(), facts.contains(FamilyFact.WIDTH), family.id());
            assertEquals(family.grades().isEmpty(), !facts.contains(FamilyFact.GRADES), family.id());
            assertEquals(family.accessTimes().isEmpty(), !facts.contains(FamilyFact.ACCESS_TIMES), family.id());
            assertEquals(family.standards().isEmpty(), !facts.contains(FamilyFact.STANDARDS), family.id());
            assertEquals(family.remark().isEmpty(), !facts.contains(FamilyFact.REMARK), family.id());
        }
    }

    @Test
    void gradesAndAccessTimesAreInOrderAndNamedWithTheLabel() {
        for (Family family : Families.all()) {
            assertEquals(family.grades().stream().sorted((a, b) -> a.rate().compareTo(b.rate())).toList(),
                    family.grades(), family.id());
            assertEquals(family.accessTimes().stream().sorted().toList(), family.accessTimes(), family.id());
            family.grades().forEach(grade -> assertTrue(grade.name().startsWith(family.label()), grade.name()));
            assertFalse(family.grades().isEmpty() && family.accessTimes().isEmpty(), family.id());
        }
    }

    @Test
    void twoFamiliesThatDifferByBufferingAreToldApartByItOnly() {
        ModuleKind kind = ModuleKind.of(Generation.DDR2, Form.DIMM, Capacity.ofGiB(1));
        assertEquals(Optional.empty(), Families.of(kind));
        assertEquals("ddr2-dimm", Families.of(kind.with(Buffering.REGISTERED)).orElseThrow().id());
        assertEquals("fb-dimm", Families.of(kind.with(Buffering.FULLY_BUFFERED)).orElseThrow().id());
        assertEquals(240, Families.pins(Generation.DDR2, Form.DIMM).orElseThrow());
        assertEquals(64, Families.dataBits(Generation.DDR2, Form.DIMM).orElseThrow());
    }

    @Test
    void whatNobodyMakesHasNoFamily() {
        assertEquals(Optional.empty(), Families.of(Generation.DDR3, Form.RIMM_184, Optional.empty()));
        assertEquals(Optional.empty(),
                Families.of(Generation.DDR4, Form.SO_DIMM, Optional.of(Buffering.REGISTERED)));
        assertTrue(Families.pins(Generation.SDR, Form.SIMM_72).isEmpty());
    }

    @Test
    void aModuleMayCarryTwoChannels() {
        assertEquals(16, Families.channelBits(Generation.RDRAM, Form.RIMM_184).orElseThrow());
        assertEquals(16, Families.channelBits(Generation.RDRAM, Form.RIMM_232).orElseThrow());
        assertEquals(32, Families.dataBits(Generation.RDRAM, Form.RIMM_232).orElseThrow());
        assertEquals(64, Families.channelBits(Generation.DDR5, Form.CAMM2).orElseThrow());
        assertEquals(64, Families.channelBits(Generation.DDR5, Form.DIMM).orElseThrow());
        Family ddr5 = Families.of(Generation.DDR5, Form.DIMM, Optional.empty()).orElseThrow();
        assertEquals(32, ddr5.wordBits().orElseThrow());
        assertEquals(List.of(4, 8), ddr5.checkBits());
    }

    @Test
    void aVoltageIsSureOnlyWhereEveryModuleOfTheGenerationWorksAtIt() {
        assertEquals(Set.of(Voltage.ofMillivolts(1500)), Families.sureVoltages(Generation.DDR3));
        assertEquals(Set.of(Voltage.ofMillivolts(1800)), Families.sureVoltages(Generation.DDR2));
        assertEquals(Set.of(), Families.sureVoltages(Generation.EDO));
        assertEquals(Set.of(), Families.sureVoltages(Generation.LPDDR5));
    }

    @Test
    void aNominalGradeKnowsItsTrueRate() {
        Family rimm = Families.of(Generation.RDRAM, Form.RIMM_184, Optional.empty()).orElseThrow();
        assertEquals(533_330, rimm.grade(Rate.of(600)).orElseThrow().kilotransfers());
        assertEquals(Optional.empty(), rimm.grade(Rate.of(400)));
    }

    @Test
    void aFamilyIsFoundByIdByNameOrByWords() {
        assertEquals("fb-dimm", Families.find("fb-dimm").get(0).id());
        assertEquals(1, Families.find("204-pin DDR3 SO-DIMM").size());
        assertEquals(List.of("ddr4-so-dimm"), Families.find("ddr4 sodimm").stream().map(Family::id).toList());
        assertEquals(4, Families.find("simm").size() + Families.find("rimm").size());
        assertEquals(List.of(), Families.find("DDR9"));
        assertEquals(List.of(), Families.find(" "));
    }

    @Test
    void aMistakeInTheFileIsNamedWithItsLine() {
        String start = "family: A\nid: a\ngeneration: SDR\nform: DIMM\nvolts: 3.3 | memory\n";
        assertEquals(1, read(start + "sizes: 8 MB, 16 MB | memory\n").size());
        for (String wrong : List.of("sizes: 8 MB, 16 MB", "sizes: 8 MB | memory", "sizes: 8 MB, 9 PB | memory",
                "sizes: 8 MB, 16 MB | memory\ncolour: red", "no colon", "id: b")) {
            String message = assertThrows(IllegalStateException.class, () -> read(start + wrong), wrong).getMessage();
            assertTrue(message.contains("ine 6") || message.contains("line 7"), message);
        }
    }

    private static List<Family> read(String text) {
        try {
            return FamilyFile.read(new StringReader(text));
        } catch (java.io.IOException impossible) {
            throw new AssertionError(impossible);
        }
    }
}
