package slotledger.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slotledger.checks.fixture.rule.Judge;
import slotledger.checks.fixture.rule.Pageless;
import slotledger.checks.fixture.rule.Sourced;
import slotledger.checks.fixture.rule.Sourceless;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;

class RulesTest {

    private static final String RULE = "slotledger.rules.spi.MemoryRule";

    @Test
    void everyRuleHasASourceAPageAndATest() throws ReflectiveOperationException {
        List<JavaClass> rules = implementations(Classes.ours(), RULE);
        assertFalse(rules.isEmpty(), "rules were found");
        assertEquals(List.of(), violations(rules, testClasses()));
    }

    @Test
    void aRuleWithoutSourcePageOrTestIsFound() throws ReflectiveOperationException {
        List<JavaClass> rules = implementations(
                Classes.of(Judge.class, Sourced.class, Pageless.class, Sourceless.class), Judge.class.getName());
        assertEquals(
                List.of("Pageless: its source (A standard) names no page", "Sourceless: it has no source",
                        "Sourceless: there is no SourcelessTest"),
                violations(rules, Set.of("SourcedTest", "PagelessTest")));
    }

    private static List<JavaClass> implementations(JavaClasses classes, String interfaceName) {
        return classes.stream().filter(one -> one.isAssignableTo(interfaceName) && !one.isInterface())
                .filter(one -> !one.getModifiers().contains(JavaModifier.ABSTRACT))
                .sorted((a, b) -> a.getName().compareTo(b.getName())).toList();
    }

    private static Set<String> testClasses() {
        return Project.filesBelow(Project.top().resolve("bundles/slotledger.rules/src/test")).stream()
                .map(file -> file.getFileName().toString().replace(".java", "")).collect(Collectors.toSet());
    }

    private static List<String> violations(List<JavaClass> rules, Set<String> tests)
            throws ReflectiveOperationException {
        List<String> found = new ArrayList<>();
        for (JavaClass rule : rules) {
            List<Source> sources = sources(rule.reflect());
            if (sources.isEmpty()) {
                found.add(rule.getSimpleName() + ": it has no source");
            }
            sources.stream().filter(source -> source.ground() == Ground.DOCUMENT && source.place().isBlank())
                    .forEach(source -> found.add("%s: its source (%s) names no page"
                            .formatted(rule.getSimpleName(), source.document())));
            if (!tests.contains(rule.getSimpleName() + "Test")) {
                found.add("%s: there is no %1$sTest".formatted(rule.getSimpleName()));
            }
        }
        return found;
    }

    /** What the rule's methods without parameters say about where it comes from. */
    private static List<Source> sources(Class<?> rule) throws ReflectiveOperationException {
        Constructor<?> constructor = rule.getDeclaredConstructor();
        constructor.setAccessible(true);
        Object instance = constructor.newInstance();
        List<Source> sources = new ArrayList<>();
        for (Method method : rule.getMethods()) {
            if (method.getParameterCount() == 0 && method.getDeclaringClass() != Object.class) {
                method.setAccessible(true);
                if (method.getReturnType() == Source.class) {
                    sources.add((Source) method.invoke(instance));
                } else if (Collection.class.isAssignableFrom(method.getReturnType())) {
                    ((Collection<?>) method.invoke(instance)).stream().filter(Source.class::isInstance)
                            .map(Source.class::cast).forEach(sources::add);
                }
            }
        }
        return sources;
    }
}
