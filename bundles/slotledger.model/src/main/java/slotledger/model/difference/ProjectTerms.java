package slotledger.model.difference;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slotledger.model.project.EntryWords;
import slotledger.model.project.Part;
import slotledger.model.project.ProjectState;

/** Compares what a project holds beside fleet and trade: files that are not looked into, and decisions. */
final class ProjectTerms {

    private static final Set<Part> NOT_LOOKED_INTO = EnumSet.of(Part.BOARDS, Part.CHOICES, Part.MAPPING);

    private ProjectTerms() {
    }

    static List<Term> files(ProjectState before, ProjectState after) {
        Terms terms = new Terms();
        terms.compare("file", files(before), files(after));
        return terms.list();
    }

    private static Map<String, String> files(ProjectState state) {
        Map<String, String> files = new LinkedHashMap<>();
        state.parts().values().stream().filter(part -> NOT_LOOKED_INTO.contains(part.part()))
                .forEach(part -> part.files().forEach(file -> files.put(file.name(),
                        file.size() + " bytes, SHA-256 " + file.sha256().substring(0, 8) + "...")));
        return files;
    }

    static List<Term> decisions(ProjectState before, ProjectState after) {
        Terms terms = new Terms();
        terms.compare("decision of", decisions(before), decisions(after));
        return terms.list();
    }

    private static Map<String, String> decisions(ProjectState state) {
        Map<String, String> decisions = new LinkedHashMap<>();
        state.decisions().forEach(entry -> decisions.put(
                entry.author().who() + " in entry " + entry.number(),
                EntryWords.words(ProjectState.decision(entry))));
        return decisions;
    }
}
