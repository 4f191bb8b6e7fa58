package slotledger.checks;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slotledger.checks.fixture.abroad.Peeper;
import slotledger.checks.fixture.cycle.one.First;
import slotledger.checks.fixture.cycle.two.Second;
import slotledger.checks.fixture.fence.Prints;
import slotledger.checks.fixture.fence.UsesDatabase;
import slotledger.checks.fixture.fence.UsesJetty;
import slotledger.checks.fixture.fence.UsesPoi;
import slotledger.checks.fixture.fence.UsesSolver;
import slotledger.checks.fixture.fence.UsesSwt;
import slotledger.checks.fixture.home.internal.Hidden;

class ArchitectureTest {

    private static final ArchRule NO_CYCLES = slices().matching("slotledger.(**)").should().beFreeOfCycles();

    private static final ArchRule NO_FOREIGN_INTERNAL =
            ArchRuleDefinition.classes().should(new ArchCondition<>("use no internal package of another bundle") {
                @Override
                public void check(JavaClass one, ConditionEvents events) {
                    one.getDirectDependenciesFromSelf().stream()
                            .filter(d -> isForeignInternal(one.getPackageName(), d.getTargetClass().getPackageName()))
                            .forEach(d -> events.add(SimpleConditionEvent.violated(d, d.getDescription())));
                }
            });

    private static final ArchRule NO_STANDARD_STREAMS = noClasses().that().resideOutsideOfPackage("slotledger.cli..")
            .should(ACCESS_STANDARD_STREAMS);

    /** A library and the packages it may be used in. */
    private enum Fence {
        SWT(new String[] {"org.eclipse.swt..", "org.eclipse.jface..", "org.eclipse.ui.."}, UsesSwt.class,
                "slotledger.workbench.."),
        POI(new String[] {"org.apache.poi.."}, UsesPoi.class,
                "slotledger.intake.internal..", "slotledger.export.internal.."),
        SOLVER(new String[] {"com.google.ortools.."}, UsesSolver.class, "slotledger.ortools.internal.."),
        DATABASE(new String[] {"java.sql..", "javax.sql.."}, UsesDatabase.class, "slotledger.store.internal.."),
        HTTP(new String[] {"org.eclipse.jetty.."}, UsesJetty.class, "slotledger.serve.internal.http..");

        private final ArchRule rule;
        private final Class<?> fixture;

        Fence(String[] libraries, Class<?> fixture, String... homes) {
            this.rule = noClasses().that().resideOutsideOfPackages(homes)
                    .should().dependOnClassesThat().resideInAnyPackage(libraries);
            this.fixture = fixture;
        }
    }

    @Test
    void noTwoPackagesUseEachOther() {
        assertEquals(List.of(), Classes.violations(NO_CYCLES, Classes.ours()));
    }

    @Test
    void aCycleIsFound() {
        assertFalse(Classes.violations(NO_CYCLES, Classes.of(First.class, Second.class)).isEmpty());
    }

    @Test
    void noBundleReachesIntoTheInternalPackagesOfAnother() {
        assertEquals(List.of(), Classes.violations(NO_FOREIGN_INTERNAL, Classes.ours()));
    }

    @Test
    void aReachIntoAForeignInternalPackageIsFound() {
        assertFalse(Classes.violations(NO_FOREIGN_INTERNAL, Classes.of(Peeper.class, Hidden.class)).isEmpty());
    }

    @Test
    void onlyTheCommandLineWritesOnStandardOutput() {
        assertEquals(List.of(), Classes.violations(NO_STANDARD_STREAMS, Classes.ours()));
    }

    @Test
    void aPrintOutsideTheCommandLineIsFound() {
        assertFalse(Classes.violations(NO_STANDARD_STREAMS, Classes.of(Prints.class)).isEmpty());
    }

    @ParameterizedTest
    @EnumSource
    void aLibraryStaysWithinItsFence(Fence fence) {
        assertEquals(List.of(), Classes.violations(fence.rule, Classes.ours()));
    }

    @ParameterizedTest
    @EnumSource
    void aClassOutsideTheFenceIsFound(Fence fence) {
        assertFalse(Classes.violations(fence.rule, Classes.of(fence.fixture)).isEmpty());
    }

    private static boolean isForeignInternal(String user, String used) {
        int internal = (used + ".").indexOf(".internal.");
        return used.startsWith("slotledger.") && internal >= 0 && !MayUse.isIn(user, used.substring(0, internal));
    }
}
