package slotledger.export.internal.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Writes records as JSON objects, member by member under the names of their components. What is absent is left out;
 * sets are written in their natural order, so that equal values give equal files.
 */
final class RecordWriter {

    private final JsonGenerator out;

    RecordWriter(JsonGenerator out) {
        this.out = out;
    }

    void write(Object value) throws IOException {
        if (value instanceof BigDecimal number) {
            out.writeString(number.toPlainString());
        } else if (value instanceof String || value instanceof LocalDate || value instanceof Currency) {
            out.writeString(value.toString());
        } else if (value instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else if (value instanceof Integer || value instanceof Long) {
            out.writeNumber(((Number) value).longValue());
        } else if (value instanceof Enum<?> choice) {
            out.writeString(Shape.name(choice));
        } else if (value instanceof Set<?> set) {
            writeAll(set.stream().sorted().toList());
        } else if (value instanceof Collection<?> list) {
            writeAll(list);
        } else if (value instanceof Map<?, ?> map) {
            writeMap(map);
        } else if (value instanceof Record whole) {
            writeRecord(whole);
        } else {
            throw new IllegalArgumentException(
                    "The type %s must be one that plan files can hold.".formatted(value.getClass().getName()));
        }
    }

    private void writeAll(Collection<?> values) throws IOException {
        out.writeStartArray();
        for (Object value : values) {
            write(value);
        }
        out.writeEndArray();
    }

    private void writeMap(Map<?, ?> map) throws IOException {
        out.writeStartObject();
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            out.writeFieldName((String) entry.getKey());
            write(entry.getValue());
        }
        out.writeEndObject();
    }

    private void writeRecord(Record whole) throws IOException {
        if (Shape.isBare(whole.getClass())) {
            write(Shape.get(whole, whole.getClass().getRecordComponents()[0]));
            return;
        }
        out.writeStartObject();
        if (Shape.isChoice(whole.getClass())) {
            out.writeStringField(Shape.TYPE, Shape.name(whole.getClass()));
        }
        for (RecordComponent component : whole.getClass().getRecordComponents()) {
            Object value = Shape.get(whole, component);
            if (value instanceof Optional<?> optional) {
                value = optional.orElse(null);
            } else if (value instanceof OptionalInt optional) {
                value = optional.isPresent() ? Integer.valueOf(optional.getAsInt()) : null;
            }
            if (value != null) {
                out.writeFieldName(component.getName());
                write(value);
            }
        }
        out.writeEndObject();
    }
}
