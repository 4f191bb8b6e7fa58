package slotledger.checks;

import java.util.List;

/**
 * A file of text to be checked.
 *
 * @param name the path below the project's top folder, with slashes
 */
record TextFile(String name, String text) {

    private static final List<String> ENDINGS = List.of(".java", ".xml", ".md", ".bnd", ".bndrun", ".properties",
            ".ini", ".cmd", ".MF", ".css", ".e4xmi", ".yaml", ".yml", ".json", ".html", ".svg", ".txt", ".sh",
            ".gitignore", ".editorconfig", "/slotledger", "/slotledger-workbench", ".ci/run");

    boolean isJava() {
        return name.endsWith(".java");
    }

    static List<TextFile> all() {
        return Project.filesBelow(Project.top()).stream()
                .filter(file -> ENDINGS.stream().anyMatch(Project.name(file)::endsWith))
                .map(file -> new TextFile(Project.name(file), Project.read(file))).toList();
    }
}
