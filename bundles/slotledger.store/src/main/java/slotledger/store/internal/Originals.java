package slotledger.store.internal;

import java.util.List;
import slotledger.model.project.Change;
import slotledger.model.project.Original;

/** Which files a change brings. */
final class Originals {

    private Originals() {
    }

    static List<Original> of(Change change) {
        if (change instanceof Change.Imported imported) {
            return imported.parts().values().stream().flatMap(List::stream).toList();
        }
        return change instanceof Change.Planned planned ? List.of(planned.file()) : List.of();
    }
}
