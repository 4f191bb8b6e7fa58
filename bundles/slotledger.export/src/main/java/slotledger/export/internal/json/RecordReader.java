package slotledger.export.internal.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Reads what {@link RecordWriter} wrote; anything else is refused with the path of the member concerned. */
final class RecordReader {

    /** A member is not what it must be. */
    static final class MismatchException extends Exception {

        private static final long serialVersionUID = 1L;

        MismatchException(String path, String message) {
            super("at " + path + ": " + message);
        }
    }

    Object read(JsonNode node, Type type, String path) throws MismatchException {
        if (type instanceof ParameterizedType generic) {
            return readGeneric(node, generic, path);
        }
        Class<?> raw = (Class<?>) type;
        if (raw == String.class) {
            return text(node, path);
        } else if (raw == int.class || raw == Integer.class) {
            require(node.canConvertToInt() && node.isIntegralNumber(), path, "a whole number is expected.");
            return node.intValue();
        } else if (raw == long.class) {
            require(node.canConvertToLong() && node.isIntegralNumber(), path, "a whole number is expected.");
            return node.longValue();
        } else if (raw == boolean.class) {
            require(node.isBoolean(), path, "true or false is expected.");
            return node.booleanValue();
        } else if (raw == BigDecimal.class) {
            return decimal(text(node, path), path);
        } else if (raw == LocalDate.class) {
            return date(text(node, path), path);
        } else if (raw == Currency.class) {
            return currency(text(node, path), path);
        } else if (raw == OptionalInt.class) {
            return node.isMissingNode() ? OptionalInt.empty() : OptionalInt.of((int) read(node, int.class, path));
        } else if (raw.isEnum()) {
            return choice(text(node, path), raw, path);
        } else if (raw.isSealed()) {
            return readChoice(node, raw, path);
        } else if (raw.isRecord()) {
            return readRecord(node, raw, path);
        }
        throw new IllegalArgumentException(
                "The type %s must be one that plan files can hold.".formatted(raw.getName()));
    }

    private Object readGeneric(JsonNode node, ParameterizedType type, String path) throws MismatchException {
        Type[] arguments = type.getActualTypeArguments();
        if (type.getRawType() == Optional.class) {
            return node.isMissingNode() ? Optional.empty() : Optional.of(read(node, arguments[0], path));
        } else if (type.getRawType() == Map.class) {
            require(node.isObject(), path, "an object is expected.");
            Map<String, Object> map = new LinkedHashMap<>();
            for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
                String name = names.next();
                map.put(name, read(node.get(name), arguments[1], path + "." + name));
            }
            return map;
        }
        require(node.isArray(), path, "a list is expected.");
        List<Object> values = new ArrayList<>(node.size());
        for (int i = 0; i < node.size(); i++) {
            values.add(read(node.get(i), arguments[0], path + "[" + i + "]"));
        }
        return type.getRawType() == Set.class ? new LinkedHashSet<>(values) : values;
    }

    /** A word is one of an enum's; an object says which record it is, where there are several. */
    private Object readChoice(JsonNode node, Class<?> sealed, String path) throws MismatchException {
        for (Class<?> choice : sealed.getPermittedSubclasses()) {
            if (choice.isEnum() ? node.isTextual() : !Shape.isChoice(choice) && node.isObject()) {
                return read(node, choice, path);
            }
        }
        require(node.isObject(), path, "an object is expected.");
        String wanted = text(node.path(Shape.TYPE), path + "." + Shape.TYPE);
        for (Class<?> choice : sealed.getPermittedSubclasses()) {
            if (Shape.name(choice).equals(wanted)) {
                return readRecord(node, choice, path);
            }
        }
        throw new MismatchException(path + "." + Shape.TYPE, "\"" + wanted + "\" is not known.");
    }

    private Object readRecord(JsonNode node, Class<?> type, String path) throws MismatchException {
        RecordComponent[] components = type.getRecordComponents();
        if (Shape.isBare(type)) {
            return make(type, new Object[] {text(node, path)}, path);
        }
        require(node.isObject(), path, "an object is expected.");
        Set<String> known = new HashSet<>();
        if (Shape.isChoice(type)) {
            known.add(Shape.TYPE);
        }
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            String name = components[i].getName();
            known.add(name);
            values[i] = read(node.path(name), components[i].getGenericType(), path + "." + name);
        }
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            require(known.contains(name), path, "the member \"" + name + "\" is not known.");
        }
        return make(type, values, path);
    }

    private static Object make(Class<?> type, Object[] values, String path) throws MismatchException {
        try {
            Constructor<?> canonical = type.getDeclaredConstructors()[0];
            for (Constructor<?> constructor : type.getDeclaredConstructors()) {
                if (constructor.getParameterCount() == values.length) {
                    canonical = constructor;
                }
            }
            return canonical.newInstance(values);
        } catch (InvocationTargetException e) {
            throw new MismatchException(path, e.getCause().getMessage());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("The record %s must have a public constructor.".formatted(type), e);
        }
    }

    private static Object choice(String text, Class<?> type, String path) throws MismatchException {
        for (Object constant : type.getEnumConstants()) {
            if (Shape.name((Enum<?>) constant).equals(text)) {
                return constant;
            }
        }
        throw new MismatchException(path, "\"" + text + "\" is not one of the words allowed.");
    }

    private static BigDecimal decimal(String text, String path) throws MismatchException {
        require(text.matches("\\d{1,30}([.]\\d{1,30})?"), path, "\"" + text + "\" is not a number like 0.92.");
        return new BigDecimal(text);
    }

    private static LocalDate date(String text, String path) throws MismatchException {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new MismatchException(path, "\"" + text + "\" is not a day like 2026-08-01.");
        }
    }

    private static Currency currency(String text, String path) throws MismatchException {
        try {
            return Currency.getInstance(text);
        } catch (IllegalArgumentException e) {
            throw new MismatchException(path, "\"" + text + "\" is not a currency like EUR.");
        }
    }

    private static String text(JsonNode node, String path) throws MismatchException {
        require(node.isTextual(), path, node.isMissingNode() ? "it is missing." : "a text is expected.");
        return node.textValue();
    }

    private static void require(boolean holds, String path, String message) throws MismatchException {
        if (!holds) {
            throw new MismatchException(path, message);
        }
    }
}
