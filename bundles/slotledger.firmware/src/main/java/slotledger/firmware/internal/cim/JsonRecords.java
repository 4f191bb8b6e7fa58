package slotledger.firmware.internal.cim;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds the objects with plain values in JSON, however nested. Text that is no JSON gives what came before it. */
final class JsonRecords {

    private static final int DEEPEST = 64;

    private final String text;
    private final List<CimRecord> records = new ArrayList<>();
    private int at;

    private JsonRecords(String text) {
        this.text = text;
    }

    static List<CimRecord> read(String text) {
        JsonRecords reader = new JsonRecords(text);
        try {
            reader.value(0);
        } catch (Damaged end) {
            return reader.records;
        }
        return reader.records;
    }

    /** What follows is no JSON. */
    private static final class Damaged extends Exception {
        private static final long serialVersionUID = 1L;
    }

    /** The value as text; blank for null, an object or an array. */
    private String value(int depth) throws Damaged {
        if (depth > DEEPEST) {
            throw new Damaged();
        }
        switch (peek()) {
            case '{' -> object(depth);
            case '[' -> array(depth);
            case '"' -> {
                return string();
            }
            default -> {
                return word();
            }
        }
        return "";
    }

    private void object(int depth) throws Damaged {
        at++;
        Map<String, String> values = new HashMap<>();
        while (peek() != '}') {
            String name = string();
            expect(':');
            values.put(name, value(depth + 1));
            comma('}');
        }
        at++;
        records.add(new CimRecord(values));
    }

    private void array(int depth) throws Damaged {
        at++;
        while (peek() != ']') {
            value(depth + 1);
            comma(']');
        }
        at++;
    }

    private void comma(char end) throws Damaged {
        if (peek() == ',') {
            at++;
        } else if (peek() != end) {
            throw new Damaged();
        }
    }

    private void expect(char wanted) throws Damaged {
        if (peek() != wanted) {
            throw new Damaged();
        }
        at++;
    }

    private char peek() throws Damaged {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        if (at >= text.length()) {
            throw new Damaged();
        }
        return text.charAt(at);
    }

    private String word() throws Damaged {
        int start = at;
        while (at < text.length()
                && (Character.isLetterOrDigit(text.charAt(at)) || "+-.".indexOf(text.charAt(at)) >= 0)) {
            at++;
        }
        if (at == start) {
            throw new Damaged();
        }
        String word = text.substring(start, at);
        return word.equals("null") ? "" : word;
    }

    private String string() throws Damaged {
        expect('"');
        StringBuilder found = new StringBuilder();
        while (at < text.length()) {
            char one = text.charAt(at++);
            if (one == '"') {
                return found.toString();
            }
            found.append(one == '\\' ? escaped() : one);
        }
        throw new Damaged();
    }

    private char escaped() throws Damaged {
        if (at >= text.length()) {
            throw new Damaged();
        }
        char one = text.charAt(at++);
        if (one == 'u') {
            int end = at + 4;
            if (end > text.length() || !text.substring(at, end).matches("[0-9A-Fa-f]{4}")) {
                throw new Damaged();
            }
            char code = (char) Integer.parseInt(text.substring(at, end), 16);
            at = end;
            return code;
        }
        return switch (one) {
            case 'n', 'r', 't', 'b', 'f' -> ' ';
            default -> one;
        };
    }
}
