package slotledger.app.internal;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import slotledger.app.Project;
import slotledger.model.project.Decision;
import slotledger.model.project.Entry;
import slotledger.model.project.ProjectState;

/** The decisions of one kind that hold in a project, each with the words for who made it. */
final class Decisions {

    /** A decision and the entry that holds it. */
    record Made<D extends Decision>(D decision, Entry entry) {

        /** "anna decided on 2026-11-28 (entry 12: counted again)". */
        String by() {
            String why = entry.author().why();
            return "%s decided on %s (entry %d%s)".formatted(entry.author().who(),
                    entry.made().atOffset(ZoneOffset.UTC).toLocalDate(), entry.number(),
                    why.isEmpty() ? "" : ": " + why);
        }

        /** What to do where the decision no longer holds good. */
        String takeBack() {
            return "take the decision back with \"project undo --entry " + entry.number() + "\"";
        }
    }

    private Decisions() {
    }

    static <D extends Decision> List<Made<D>> of(Project project, Class<D> kind) {
        List<Made<D>> made = new ArrayList<>();
        project.stored().ifPresent(stored -> stored.state().decisions().forEach(entry -> {
            Decision decision = ProjectState.decision(entry);
            if (kind.isInstance(decision)) {
                made.add(new Made<>(kind.cast(decision), entry));
            }
        }));
        return made;
    }
}
