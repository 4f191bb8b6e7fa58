package slotledger.catalog.internal.resolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.source.Place;
import slotledger.model.unit.Capacity;

/** Puts what an inventory lists of one machine into the slots of its board. */
final class Placement {

    private final Board board;
    private final ObservedMachine machine;
    private final Listing listing;
    private final Remarks remarks;
    private final SolderedMemory soldered;
    private final BoardFacts facts;
    private final Map<String, SlotContent> contents = new LinkedHashMap<>();

    Placement(Board board, ObservedMachine machine, Listing listing, Remarks remarks) {
        this.board = board;
        this.machine = machine;
        this.listing = listing;
        this.remarks = remarks;
        this.soldered = new SolderedMemory(board, machine, remarks);
        this.facts = new BoardFacts(board, remarks);
    }

    /** The processors that the slots with modules need. */
    int processorsNeeded() {
        Set<String> filled = listing.placedMemory();
        int byLabel = filled.stream()
                .mapToInt(label -> board.channel(board.slot(label).channel()).processor())
                .max()
                .orElse(1);
        return Math.max(byLabel, FillOrder.processorsFor(board, filled.size() + listing.looseMemory().size()));
    }

    /** The population; of no use where an error was remarked. */
    Population place(int processors, Redundancy redundancy) {
        if (listing.holdsAnything()) {
            placeNamed();
            placeLoose(processors, redundancy);
        }
        if (!listing.holdsMemory()) {
            placeTotal(FillOrder.usable(board, processors));
        }
        Optional<Capacity> inSockets = hasUnread() ? Optional.empty() : Optional.of(sum());
        contents.putAll(soldered.contents(listing.soldered(), inSockets));
        Map<String, SlotContent> ordered = new LinkedHashMap<>();
        board.slots().forEach(slot ->
                ordered.put(slot.label(), contents.getOrDefault(slot.label(), SlotContent.EMPTY)));
        return new Population(ordered);
    }

    private void placeNamed() {
        listing.placed().forEach((label, slot) -> {
            if (board.slot(label).use() == SlotUse.DEAD && !slot.content().isEmpty()) {
                remarks.errorAt(slot.place(), "module-in-dead-slot", slot.content().toString(),
                        "The connector %s of the board %s isn't wired; nothing works in it."
                                .formatted(label, board.name()),
                        "one of the sockets " + String.join(", ", board.sockets().stream().map(Slot::label).toList()),
                        "Look up in the firmware setup which slots hold modules; maybe the inventory counts slots in a"
                                + " way of its own.");
            } else {
                put(label, slot.content(), slot.place());
            }
        });
        if (listing.shifted() && !listing.placed().isEmpty()) {
            remarks.note("slots-assumed", "", "The inventory counts slots from 0, the board from 1; each name was taken"
                    + " for the next printed label.", "printed labels: " + labels(listing.placed().keySet()),
                    "Check it on opening the machine.");
        }
    }

    private void placeLoose(int processors, Redundancy redundancy) {
        Set<String> taken = listing.placedMemory();
        List<String> usable = new ArrayList<>(FillOrder.usable(board, processors));
        usable.removeAll(taken);
        usable.removeIf(label -> contents.containsKey(label) && !contents.get(label).isEmpty());
        int sockets = usable.size();
        List<ObservedSlot> modules = new ArrayList<>(soldered.without(listing, sockets));
        if (modules.size() > sockets) {
            remarks.error("more-modules-than-slots", modules.size() + taken.size() + " modules",
                    "The board %s has fewer sockets that work with %d processor(s)."
                            .formatted(board.name(), processors),
                    "at most %d modules".formatted(sockets + taken.size()),
                    "Check the model and the number of modules; maybe two machines share a row.");
            return;
        }
        if (board.fill().largestFirst()) {
            modules.sort(Comparator.comparing((ObservedSlot slot) -> slot.content().capacity()).reversed());
        }
        List<String> order = new ArrayList<>(FillOrder.free(board, processors, taken, modules.size(),
                redundancy));
        order.retainAll(usable);
        List<String> free = order.subList(0, modules.size());
        for (int i = 0; i < modules.size(); i++) {
            put(free.get(i), modules.get(i).content(), modules.get(i).place());
        }
        placeFillers(order.subList(modules.size(), order.size()));
        boolean alike = modules.stream().map(ObservedSlot::content).distinct().count() <= 1;
        if (!modules.isEmpty() && !(alike && modules.size() == sockets)) {
            remarkAssumption(free, alike);
        }
    }

    /** Fillers go where no module is. */
    private void placeFillers(List<String> sockets) {
        List<ObservedSlot> fillers = listing.looseFillers();
        for (int i = 0; i < Math.min(fillers.size(), sockets.size()); i++) {
            put(sockets.get(i), fillers.get(i).content(), fillers.get(i).place());
        }
        if (fillers.size() > sockets.size()) {
            remarks.warning("more-fillers-than-slots", fillers.size() + " fillers",
                    "The board %s has fewer sockets beside its modules.".formatted(board.name()),
                    "at most %d fillers".formatted(sockets.size()), "Check the model and what is listed.");
        }
    }

    private void remarkAssumption(List<String> slots, boolean alike) {
        boolean documented = !board.fill().order().isEmpty() || !board.fill().table().isEmpty();
        String message = "The inventory doesn't name the board's slots; its modules were taken to be in %s, %s."
                .formatted(String.join(", ", slots), documented
                        ? "in the order in which the board is filled" : "in the order of the board's slots");
        String expected = "slot names as printed: " + labels(FillOrder.usable(board, board.processorSockets()));
        String remedy = "Check it on opening the machine, before anything is moved.";
        if (alike && documented) {
            remarks.note("slots-assumed", "", message, expected, remedy);
        } else {
            remarks.warning("slots-assumed", "", message, expected, remedy);
        }
    }

    private void placeTotal(List<String> sockets) {
        TotalOnly total = new TotalOnly(board, machine, remarks);
        total.place(sockets, soldered.fixed(), soldered.varies())
                .forEach((label, content) -> put(label, content, machine.place()));
    }

    private void put(String label, SlotContent content, Place place) {
        contents.put(label, content.piece().<SlotContent>map(piece -> piece instanceof Filler filler
                ? Blanks.named(board, filler)
                : SlotContent.of(facts.complete((ModuleKind) piece, label, place))).orElse(content));
    }

    private boolean hasUnread() {
        return contents.values().stream().anyMatch(SlotContent.Unread.class::isInstance);
    }

    private Capacity sum() {
        return contents.values().stream().map(SlotContent::capacity).reduce(Capacity.NONE, Capacity::plus);
    }

    private static String labels(Iterable<String> labels) {
        return String.join(", ", labels);
    }
}
