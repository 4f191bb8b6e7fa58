package slotledger.checks;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which bundle may use which bundles of ours, and which libraries. */
final class MayUse {

    /**
     * One line of the table.
     *
     * @param ours      last parts of the names of our bundles, of which only API packages may be used
     * @param libraries package prefixes
     */
    record Line(Set<String> ours, Set<String> libraries) {
    }

    private static final Set<String> POI =
            Set.of("org.apache.poi", "org.apache.xmlbeans", "org.openxmlformats.schemas");
    private static final Set<String> NONE = Set.of();

    static final Map<String, Line> TABLE = Map.ofEntries(
            Map.entry("model", new Line(NONE, NONE)),
            Map.entry("firmware", new Line(NONE, NONE)),
            Map.entry("rules", new Line(Set.of("model"), NONE)),
            Map.entry("simm", new Line(Set.of("model", "rules"), NONE)),
            Map.entry("catalog", new Line(Set.of("model"), Set.of("org.snakeyaml.engine"))),
            Map.entry("intake", new Line(Set.of("model", "firmware"), with(POI, "org.apache.commons",
                    "com.fasterxml.aalto", "org.codehaus.stax2", "org.snakeyaml.engine"))),
            Map.entry("solver", new Line(Set.of("model"), NONE)),
            Map.entry("ojalgo", new Line(Set.of("model", "solver", "lib.ojalgo"), Set.of("org.ojalgo"))),
            Map.entry("ortools", new Line(Set.of("model", "solver", "lib.solver"), Set.of("com.google.ortools"))),
            Map.entry("planner", new Line(Set.of("model", "rules", "solver"), NONE)),
            Map.entry("export", new Line(Set.of("model"), with(POI, "com.lowagie.text", "org.librepdf.openpdf",
                    "com.google.zxing", "com.fasterxml.jackson"))),
            Map.entry("store", new Line(Set.of("model", "lib.flyway"), Set.of("javax.sql", "org.h2", "org.flywaydb",
                    "org.postgresql", "com.zaxxer.hikari", "com.fasterxml.jackson"))),
            Map.entry("app", new Line(Set.of("model", "firmware", "rules", "catalog", "intake", "solver",
                    "planner", "export", "store"), NONE)),
            Map.entry("serve", new Line(Set.of("model", "app"), Set.of("org.eclipse.jetty", "com.google.zxing",
                    "com.fasterxml.jackson"))),
            Map.entry("cli", new Line(Set.of("model", "firmware", "app", "serve"), Set.of("picocli",
                    "org.eclipse.equinox.app", "com.fasterxml.jackson"))),
            Map.entry("workbench", new Line(Set.of("model", "app"), Set.of("org.eclipse", "jakarta"))));

    /** What comes with Java and with the framework, and may be used anywhere. */
    private static final Set<String> ANYWHERE =
            Set.of("java", "javax.crypto", "javax.xml", "javax.imageio", "org.w3c.dom", "org.xml.sax", "org.osgi");

    private MayUse() {
    }

    private static Set<String> with(Set<String> some, String... more) {
        return Stream.concat(some.stream(), Stream.of(more)).collect(Collectors.toUnmodifiableSet());
    }

    /** Whether a class of a bundle may use a class of a package. */
    static boolean allows(String bundle, String usedPackage) {
        if (isIn(usedPackage, "slotledger." + bundle) || ANYWHERE.stream().anyMatch(p -> isIn(usedPackage, p))) {
            return true;
        }
        Line line = TABLE.get(bundle);
        boolean api = !(usedPackage + ".").contains(".internal.");
        return line.ours().stream().anyMatch(ours -> api && isIn(usedPackage, "slotledger." + ours))
                || line.libraries().stream().anyMatch(library -> isIn(usedPackage, library));
    }

    static boolean isIn(String packageName, String prefix) {
        return packageName.equals(prefix) || packageName.startsWith(prefix + ".");
    }
}
