package slotledger.catalog.internal.file;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.board.Takes;
import slotledger.model.family.Families;
import slotledger.model.family.Family;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;

/** What follows from the form of a board's modules where its file says nothing. */
final class FormLaw {

    private FormLaw() {
    }

    /**
     * How many memory channels one module in these slots carries; 1 where their modules differ in this. CAMM2 for a
     * single channel exists too, and its board's file says so.
     */
    static int spans(List<Takes> takes, List<String> slots) {
        Set<Integer> channels = takes.stream()
                .filter(way -> slots.stream().anyMatch(way::holdsFor))
                .flatMap(way -> way.forms().stream().flatMap(form -> Families.of(way.generation(), form).stream()))
                .map(Family::channels)
                .collect(Collectors.toSet());
        return channels.size() == 1 ? channels.iterator().next() : 1;
    }

    /**
     * What passes the signals of an empty RIMM socket on; the channel is one line through all its sockets (D850GB
     * manual, section 1.5.3; Abit CX6 manual). Empty for other modules.
     */
    static Optional<Filler> continuity(List<Takes> takes) {
        Set<Form> forms = takes.stream().flatMap(way -> way.forms().stream()).collect(Collectors.toSet());
        if (forms.equals(Set.of(Form.RIMM_184))) {
            return Optional.of(Filler.CONTINUITY_184);
        }
        return forms.equals(Set.of(Form.RIMM_232)) ? Optional.of(Filler.CONTINUITY_232) : Optional.empty();
    }
}
