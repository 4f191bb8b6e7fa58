package slotledger.rules;

import java.util.List;
import slotledger.model.board.Takes;
import slotledger.model.module.Piece;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

/** All active rules together. Safe for use by several threads. */
public interface MemoryRules {

    /** The worst weight of any rule; builds no reasons, so that a planner can ask it very often. */
    Weight weigh(Setup setup);

    /** How the population runs; meaningful where it isn't blocked. */
    Operation operate(Setup setup);

    /** The arithmetic behind the operation, for people; worked out anew each time. */
    Arithmetic workOut(Setup setup);

    /** The verdict with a reason for every rule that has something to say, passed rules among them. */
    Verdict judge(Setup setup);

    /** How many rules have something against the population, cautions among them; builds no reasons. */
    default int objections(Setup setup) {
        return (int) judge(setup).reasons().stream().filter(reason -> reason.weight() != Weight.PASSES).count();
    }

    /** What a person can read about each rule, by id; empty where there is nothing to read. */
    default List<RulePage> pages() {
        return List.of();
    }

    /** All things that are easily taken for each other, in the order of the file they are read from. */
    default List<LookAlike> lookAlikes() {
        return List.of();
    }

    /** Why the two are easily taken for each other, turned so that "one" is the first; only where that is sure. */
    default List<LookAlike> lookAlikes(Piece one, Piece other) {
        return List.of();
    }

    /** What the piece, which is surely the "one" of each, is easily taken for. */
    default List<LookAlike> lookAlikes(Piece one) {
        return List.of();
    }

    /**
     * What the piece surely is and may be taken for, where a slot may take the other; turned so that "one" is the piece
     * and "other" what the slot takes. Whether the piece is wrong there is for a rule to say.
     */
    default List<LookAlike> wrongFor(Piece piece, Takes takes) {
        return List.of();
    }
}
