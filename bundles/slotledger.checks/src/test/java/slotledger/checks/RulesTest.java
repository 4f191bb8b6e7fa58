package slotledger.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slotledger.checks.fixture.rule.Judge;
import slotledger.checks.fixture.rule.Pageless;
import slotledger.checks.fixture.rule.Placeless;
import slotledger.checks.fixture.rule.Sourced;
import slotledger.checks.fixture.rule.Sourceless;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;

class RulesTest {

    private static final String RULE = "slotledger.rules.spi.MemoryRule";

    @Test
    void everyRuleHasAPageASourceAndATest() throws ReflectiveOperationException {
        List<JavaClass> rules = implementations(Classes.ours(), RULE);
        assertFalse(rules.isEmpty(), "rules were found");
        assertEquals(List.of(), violations(rules, testClasses()));
    }

    @Test
    void aRuleWithoutPageSourceOrTestIsFound() throws ReflectiveOperationException {
        List<JavaClass> rules = implementations(Classes.of(Judge.class, Sourced.class, Pageless.class,
                Placeless.class, Sourceless.class), Judge.class.getName());
        assertEquals(
                List.of("Pageless: it has no page", "Placeless: A standard, but not where in it",
                        "Sourceless: its page has no source", "Sourceless: there is no SourcelessTest"),
                violations(rules, Set.of("SourcedTest", "PagelessTest", "PlacelessTest")));
    }

    private static List<JavaClass> implementations(JavaClasses classes, String interfaceName) {
        return classes.stream().filter(one -> one.isAssignableTo(interfaceName) && !one.isInterface())
                .filter(one -> !one.getModifiers().contains(JavaModifier.ABSTRACT))
                .sorted((a, b) -> a.getName().compareTo(b.getName())).toList();
    }

    private static Set<String> testClasses() {
        return Project.bundles().stream().map(bundle -> bundle.resolve("src/test")).filter(Files::isDirectory)
                .flatMap(tests -> Project.filesBelow(tests).stream())
                .map(file -> file.getFileName().toString().replace(".java", "")).collect(Collectors.toSet());
    }

    private static List<String> violations(List<JavaClass> rules, Set<String> tests)
            throws ReflectiveOperationException {
        List<String> found = new ArrayList<>();
        for (JavaClass rule : rules) {
            pageViolation(rule.reflect())
                    .ifPresent(violation -> found.add(rule.getSimpleName() + ": " + violation));
            if (!tests.contains(rule.getSimpleName() + "Test")) {
                found.add("%s: there is no %1$sTest".formatted(rule.getSimpleName()));
            }
        }
        return found;
    }

    /** A rule is a component, so it can be made without arguments; its page is a record that holds a source. */
    private static Optional<String> pageViolation(Class<?> rule) throws ReflectiveOperationException {
        Constructor<?> constructor = rule.getDeclaredConstructor();
        constructor.setAccessible(true);
        Object page = call(rule.getMethod("page"), constructor.newInstance());
        if (page == null) {
            return Optional.of("it has no page");
        }
        for (RecordComponent part : page.getClass().getRecordComponents()) {
            if (part.getType() == Source.class && call(part.getAccessor(), page) instanceof Source source) {
                boolean nowhere = source.ground() == Ground.DOCUMENT && source.place().isBlank();
                return nowhere ? Optional.of(source.document() + ", but not where in it") : Optional.empty();
            }
        }
        return Optional.of("its page has no source");
    }

    private static Object call(Method method, Object instance) throws ReflectiveOperationException {
        method.setAccessible(true);
        return method.invoke(instance);
    }
}
