package slotledger.export.internal.json;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Locale;
import java.util.stream.Stream;

/** How the parts of a record are named in JSON; writer and reader agree here. */
final class Shape {

    /** Member that says which of several records an object is. */
    static final String TYPE = "type";

    private Shape() {
    }

    /** SO_DIMM is written "so-dimm". */
    static String name(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** InSlot is written "in-slot". */
    static String name(Class<?> type) {
        return type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    /** Whether a record is nothing but a name, and is written as a bare text. */
    static boolean isBare(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        return components.length == 1
                && components[0].getName().equals("value")
                && components[0].getType() == String.class;
    }

    /** Whether a record is one of several records of a sealed interface, so that it must say which. */
    static boolean isChoice(Class<?> type) {
        for (Class<?> parent : type.getInterfaces()) {
            if (parent.isSealed() && Stream.of(parent.getPermittedSubclasses()).allMatch(Class::isRecord)) {
                return true;
            }
        }
        return false;
    }

    static Object get(Record whole, RecordComponent component) {
        try {
            return component.getAccessor().invoke(whole);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(
                    "The %s of %s must be readable.".formatted(component.getName(), whole.getClass().getName()), e);
        }
    }
}
