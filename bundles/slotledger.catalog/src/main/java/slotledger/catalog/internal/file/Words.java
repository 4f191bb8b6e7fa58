package slotledger.catalog.internal.file;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import slotledger.model.board.Binding;
import slotledger.model.board.BoardFact;
import slotledger.model.board.BoardForm;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.Interleave;
import slotledger.model.board.Redundancy;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ContactMetal;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;

/** The words of board files, each with what it means. The JSON Schema lists the same ones. */
final class Words {

    static final Map<String, Boolean> FLAGS = ordered(List.of("yes", "no", "true", "false"),
            word -> word.equals("yes") || word.equals("true"));
    static final Map<String, BoardForm> BOARD_FORMS = of(BoardForm.values(), BoardForm::text);
    static final Map<String, Generation> GENERATIONS = of(Generation.values(), Generation::text);
    static final Map<String, Form> FORMS = of(Form.values(), Form::text);
    static final Map<String, Buffering> BUFFERINGS = of(Buffering.values(), Buffering::text);
    static final Map<String, ChipWidth> CHIP_WIDTHS = of(ChipWidth.values(), ChipWidth::text);
    static final Map<String, ErrorCheck> ERROR_CHECKS = of(ErrorCheck.values(), ErrorCheck::text);
    static final Map<String, ContactMetal> CONTACTS = of(ContactMetal.values(), ContactMetal::text);
    static final Map<String, EccOutcome> ECC_OUTCOMES = of(EccOutcome.values(), Words::hyphened);
    static final Map<String, Interleave> INTERLEAVES = of(Interleave.values(), Words::hyphened);
    static final Map<String, Binding> BINDINGS = of(Binding.values(), Words::hyphened);
    static final Map<String, Redundancy> REDUNDANCIES = redundancies();
    static final Map<String, BoardFact> FACTS = of(BoardFact.values(), Words::hyphened);
    static final Map<String, Ground> GROUNDS = grounds();

    private Words() {
    }

    private static Map<String, Redundancy> redundancies() {
        Map<String, Redundancy> words = new LinkedHashMap<>(of(Redundancy.values(), Redundancy::text));
        words.values().remove(Redundancy.NONE);
        return Collections.unmodifiableMap(words);
    }

    private static Map<String, Ground> grounds() {
        Map<String, Ground> words = new LinkedHashMap<>();
        words.put("document", Ground.DOCUMENT);
        words.put("measured", Ground.MEASURED);
        words.put("firmware table", Ground.FIRMWARE);
        words.put("a person's word", Ground.PERSON);
        words.put("common practice", Ground.PRACTICE);
        words.put("from memory", Ground.MEMORY);
        return Collections.unmodifiableMap(words);
    }

    private static String hyphened(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static <E> Map<String, E> of(E[] constants, Function<E, String> word) {
        Map<String, E> words = new LinkedHashMap<>();
        Arrays.asList(constants).forEach(constant -> words.put(word.apply(constant), constant));
        return Collections.unmodifiableMap(words);
    }

    private static <T> Map<String, T> ordered(List<String> texts, Function<String, T> meaning) {
        Map<String, T> words = new LinkedHashMap<>();
        texts.forEach(text -> words.put(text, meaning.apply(text)));
        return Collections.unmodifiableMap(words);
    }
}
