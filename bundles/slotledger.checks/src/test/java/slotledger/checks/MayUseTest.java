package slotledger.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class MayUseTest {

    private static final Pattern DEPENDENCY = Pattern.compile(
            "<dependency>\\s*<groupId>slotledger</groupId>\\s*<artifactId>slotledger\\.([^<]+)</artifactId>"
                    + "(\\s*<scope>test</scope>)?");

    @Test
    void everyBundleUsesOnlyWhatTheTableAllows() {
        Set<String> violations = new TreeSet<>();
        Set<String> seen = new TreeSet<>();
        for (JavaClass one : Classes.ours()) {
            String bundle = bundleOf(one.getPackageName());
            if (bundle != null) {
                seen.add(bundle);
                violations.addAll(violations(one, bundle));
            }
        }
        assertEquals(MayUse.TABLE.keySet(), seen, "the bundles whose classes were looked at");
        assertEquals(Set.of(), violations);
    }

    @Test
    void everyPomNamesOnlyBundlesThatTheTableAllows() {
        List<String> violations = new ArrayList<>();
        for (String bundle : MayUse.TABLE.keySet()) {
            Path pom = Project.top().resolve("bundles/slotledger." + bundle + "/pom.xml");
            violations.addAll(pomViolations(bundle, Project.read(pom)));
        }
        assertEquals(List.of(), violations);
    }

    @Test
    void aForeignLibraryIsFound() {
        JavaClass fixture = Classes.of(slotledger.checks.fixture.fence.UsesPoi.class).iterator().next();
        assertFalse(violations(fixture, "rules").isEmpty());
        assertEquals(Set.of(), violations(fixture, "intake"));
    }

    @Test
    void aBundleThatTheTableDoesNotNameIsFoundInAPom() {
        String pom = "<dependency> <groupId>slotledger</groupId> <artifactId>slotledger.planner</artifactId>";
        assertEquals(List.of("rules must not depend on planner"), pomViolations("rules", pom));
        assertEquals(List.of(), pomViolations("app", pom));
        assertEquals(List.of(), pomViolations("rules", pom + " <scope>test</scope>"));
    }

    @Test
    void onlyApiPackagesOfAnotherBundleMayBeUsed() {
        assertTrue(MayUse.allows("app", "slotledger.rules.spi"));
        assertFalse(MayUse.allows("app", "slotledger.rules.internal"));
        assertFalse(MayUse.allows("app", "slotledger.rules.internal.ddr"));
        assertFalse(MayUse.allows("export", "slotledger.rules"));
        assertFalse(MayUse.allows("model", "slotledger.modelling"));
    }

    private static Set<String> violations(JavaClass one, String bundle) {
        Set<String> found = new TreeSet<>();
        for (Dependency dependency : one.getDirectDependenciesFromSelf()) {
            JavaClass used = dependency.getTargetClass().getBaseComponentType();
            if (!used.isPrimitive() && !MayUse.allows(bundle, used.getPackageName())) {
                found.add("%s (%s) must not use %s".formatted(one.getName(), bundle, used.getName()));
            }
        }
        return found;
    }

    private static String bundleOf(String packageName) {
        return MayUse.TABLE.keySet().stream().filter(name -> MayUse.isIn(packageName, "slotledger." + name))
                .max(Comparator.comparingInt(String::length)).orElse(null);
    }

    private static List<String> pomViolations(String bundle, String pom) {
        List<String> found = new ArrayList<>();
        Matcher dependency = DEPENDENCY.matcher(pom);
        while (dependency.find()) {
            String other = dependency.group(1);
            boolean library = other.startsWith("lib.");
            if (dependency.group(2) == null && !library && !MayUse.TABLE.get(bundle).ours().contains(other)) {
                found.add(bundle + " must not depend on " + other);
            }
        }
        return found;
    }
}
