package slotledger.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

class FilesTest {

    private static final int MOST_LINES = 400;
    private static final int LONGEST_LINE = 120;

    private static final Set<String> TOP_LEVEL = Set.of("README.md", "DEVELOPERS.md", "pom.xml", "bundles", "features",
            "target-platform", "demo-fleet");

    /** Machines that hand out packages are named for it; a page about a format or a board is not meant. */
    private static final Pattern REGISTRY_HOST = Pattern.compile(
            "\\b(?:repo\\d*|registry|registries|mirrors?|central|oss|artifacts?|artifactory|nexus|plugins|packages|pypi"
                    + "|npm|crates|downloads?|proxy|maven)\\.[a-z0-9-]+(?:\\.[a-z0-9-]+)*\\.(?:org|com|net|io|dev)\\b");
    /** The name of the schema of a POM, which nobody fetches. */
    private static final Pattern POM_SCHEMA = Pattern.compile("http://maven\\.apache\\.org/(?:POM|xsd|SETTINGS)/");

    @Test
    void theTopLevelHoldsOnlyWhatBelongsThere() {
        File[] entries = Project.top().toFile().listFiles();
        assertEquals(List.of(), strangers(Arrays.stream(entries).map(File::getName).toList()));
    }

    @Test
    void aStrangerOnTheTopLevelIsFound() {
        assertEquals(List.of("notes.txt"), strangers(List.of("README.md", ".ci", "notes.txt", "target")));
    }

    @Test
    void noSourceFileIsTooLong(TestReporter reporter) {
        List<TextFile> sources = sources();
        int[] lengths = sources.stream().mapToInt(file -> lines(file.text()).length).sorted().toArray();
        reporter.publishEntry("source files: %d, half of them up to %d lines, the longest %d".formatted(lengths.length,
                lengths[lengths.length / 2], lengths[lengths.length - 1]));
        assertEquals(List.of(), violations(sources, FilesTest::tooLong));
    }

    @Test
    void aFileThatIsTooLongIsFound() {
        TextFile at = new TextFile("At.java", "line\n".repeat(MOST_LINES));
        TextFile over = new TextFile("Over.java", "line\n".repeat(MOST_LINES + 1));
        assertEquals(List.of("Over.java: 401 lines"), violations(List.of(at, over), FilesTest::tooLong));
    }

    @Test
    void noLineOfSourceIsTooWideOrHoldsATab() {
        assertEquals(List.of(), violations(sources(), FilesTest::badLines));
    }

    @Test
    void aWideLineAndATabAreFound() {
        TextFile bad = new TextFile("Bad.java", "x".repeat(120) + "\n" + "x".repeat(121) + "\n\ty\n");
        assertEquals(List.of("Bad.java:2: 121 characters", "Bad.java:3: a tab"),
                violations(List.of(bad), FilesTest::badLines));
    }

    @Test
    void noRegistryHostIsNamed() {
        List<TextFile> files = TextFile.all();
        assertTrue(files.stream().anyMatch(file -> file.name().equals("pom.xml")), "the files were found");
        assertEquals(List.of(), violations(files, FilesTest::registryHosts));
    }

    @Test
    void aRegistryHostIsFound() {
        TextFile bad = new TextFile("run",
                "fetch https://repo" + "1.example.org/x\nsee http://maven.apache.org/POM/4.0.0");
        assertEquals(List.of("run names repo" + "1.example.org"), violations(List.of(bad), FilesTest::registryHosts));
    }

    @Test
    void theReleaseScriptRunsTheTestCommandOfTheReadme() {
        String command = "mvn verify";
        assertTrue(Project.read(Project.top().resolve("README.md")).lines().anyMatch(command::equals), "README.md");
        assertTrue(Project.read(Project.top().resolve(".ci/run")).contains("xvfb-run -a " + command + " "), ".ci/run");
    }

    private static List<TextFile> sources() {
        return TextFile.all().stream().filter(TextFile::isJava).toList();
    }

    private static List<String> strangers(Collection<String> names) {
        return names.stream().filter(name -> !TOP_LEVEL.contains(name) && !name.startsWith("."))
                .filter(name -> !name.equals("target")).sorted().toList();
    }

    private static List<String> tooLong(TextFile file) {
        int count = lines(file.text()).length;
        return count > MOST_LINES ? List.of(file.name() + ": " + count + " lines") : List.of();
    }

    private static List<String> badLines(TextFile file) {
        List<String> found = new ArrayList<>();
        String[] lines = lines(file.text());
        for (int i = 0; i < lines.length; i++) {
            String place = file.name() + ":" + (i + 1) + ": ";
            if (lines[i].length() > LONGEST_LINE) {
                found.add(place + lines[i].length() + " characters");
            }
            if (lines[i].indexOf('\t') >= 0) {
                found.add(place + "a tab");
            }
        }
        return found;
    }

    private static List<String> registryHosts(TextFile file) {
        List<String> found = new ArrayList<>();
        Matcher host = REGISTRY_HOST.matcher(POM_SCHEMA.matcher(file.text()).replaceAll(""));
        while (host.find()) {
            found.add(file.name() + " names " + host.group());
        }
        return found;
    }

    private static String[] lines(String text) {
        return text.split("\n");
    }

    private static List<String> violations(List<TextFile> files, Function<TextFile, List<String>> check) {
        return files.stream().flatMap(file -> check.apply(file).stream()).toList();
    }
}
