package slotledger.checks;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** The compiled classes of our bundles. */
final class Classes {

    /** A library's classes that a bundle carries in itself are not ours. */
    private static final Pattern OURS_ONLY = Pattern.compile(".*/target/classes/slotledger/.*");

    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(location -> location.matches(OURS_ONLY)).importPaths(folders());

    private Classes() {
    }

    /** Of every bundle that goes into a product. */
    static JavaClasses ours() {
        return OURS;
    }

    static List<Path> folders() {
        return Project.bundles().stream()
                .filter(bundle -> !bundle.getFileName().toString()
                        .matches("slotledger\\.(checks|testkit|demo|example|itest\\..*)"))
                .map(bundle -> bundle.resolve("target/classes")).filter(Files::isDirectory).toList();
    }

    static JavaClasses of(Class<?>... fixtures) {
        return new ClassFileImporter().importClasses(fixtures);
    }

    /** One line for each violation; a rule that finds nothing to look at is a violation, too. */
    static List<String> violations(ArchRule rule, JavaClasses classes) {
        return rule.evaluate(classes).getFailureReport().getDetails();
    }
}
