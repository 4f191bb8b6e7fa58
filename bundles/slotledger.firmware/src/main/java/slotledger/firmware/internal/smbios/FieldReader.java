package slotledger.firmware.internal.smbios;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongFunction;
import slotledger.firmware.fact.Coded;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.fact.Facts;
import slotledger.firmware.fact.Problems;
import slotledger.firmware.internal.words.Placeholders;

/** Reads the fields of one structure; a field beyond the structure's length belongs to a later version: nothing. */
final class FieldReader {

    static final int BYTE = 1;
    static final int WORD = 2;
    static final int DWORD = 4;
    static final int QWORD = 8;

    private final RawStructure structure;
    private final String name;
    private final Facts.Builder facts = new Facts.Builder();
    private final Problems problems;

    FieldReader(RawStructure structure, String name, Problems problems) {
        this.structure = structure;
        this.name = name;
        this.problems = problems;
    }

    boolean has(int offset, int size) {
        return structure.has(offset, size);
    }

    long raw(int offset, int size) {
        return structure.number(offset, size);
    }

    /** The field as it stands there. */
    String hex(int offset, int size) {
        return ("0x%0" + 2 * size + "X").formatted(raw(offset, size));
    }

    FieldReader text(Fact<String> fact, int offset) {
        return text(fact, offset, Placeholders::meaning);
    }

    FieldReader text(Fact<String> fact, int offset, Function<String, Optional<String>> meaning) {
        if (!has(offset, BYTE)) {
            return this;
        }
        int wanted = (int) raw(offset, BYTE);
        String found = wanted == 0 ? "" : structure.string(wanted);
        if (found == null) {
            problem(offset, fact.name() + " is string " + wanted + ", which is not there",
                    "the number of one of the structure's strings, or 0");
            found = "";
        }
        facts.told(fact, found, meaning.apply(found));
        return this;
    }

    /** A number; the unknown ones mean that nobody knows. */
    FieldReader number(Fact<Integer> fact, int offset, int size, int... unknown) {
        return value(fact, offset, size, raw -> {
            for (int none : unknown) {
                if (raw == none) {
                    return Optional.empty();
                }
            }
            return Optional.of((int) raw);
        });
    }

    <T> FieldReader value(Fact<T> fact, int offset, int size, LongFunction<Optional<T>> meaning) {
        if (has(offset, size)) {
            facts.told(fact, hex(offset, size), meaning.apply(raw(offset, size)));
        }
        return this;
    }

    <E extends Coded> FieldReader coded(Fact<E> fact, int offset, E[] values) {
        if (!has(offset, BYTE)) {
            return this;
        }
        int code = (int) raw(offset, BYTE);
        Optional<E> found = Coded.find(values, code);
        if (found.isEmpty()) {
            problem(offset, "%s is 0x%02X".formatted(fact.name(), code), "a code that DSP0134 names");
        }
        facts.told(fact, hex(offset, BYTE), found.filter(value -> !value.isUnknown()));
        return this;
    }

    void problem(int offset, String seen, String expected) {
        problems.add(structure.at() + offset, name, seen, expected);
    }

    Facts.Builder facts() {
        return facts;
    }
}
