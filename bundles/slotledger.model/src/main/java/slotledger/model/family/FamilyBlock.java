package slotledger.model.family;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.model.module.Buffering;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/** One block of the file of families while it is read. */
final class FamilyBlock {

    /** 2 x 32 + 4, 8 | 1 x 64. */
    private static final Pattern WIDTH = Pattern.compile("(\\d+) x (\\d+)(?: \\+ ([\\d, ]+))?");
    /** 2666 = PC4-21300 | 600 = PC600 at 533.33. */
    private static final Pattern GRADE = Pattern.compile("(\\d+) = (.+?)(?: at ([\\d.]+))?");
    private static final Pattern SIZE = Pattern.compile("(\\d+) (KB|MB|GB)");
    private static final String LIST = "\\s*,\\s*";

    private final Map<String, String> lines;
    private final int end;
    private final Map<FamilyFact, Source> sources = new EnumMap<>(FamilyFact.class);

    FamilyBlock(Map<String, String> lines, int end) {
        this.lines = new HashMap<>(lines);
        this.end = end;
    }

    Family family() {
        String name = plain("family");
        String pins = sourced(FamilyFact.PINS);
        String faces = sourced(FamilyFact.FACES);
        String notch = sourced(FamilyFact.NOTCH);
        String width = sourced(FamilyFact.WIDTH);
        Matcher bits = WIDTH.matcher(width.isEmpty() ? "1 x 0" : width);
        check(bits.matches(), "width");
        int words = Integer.parseInt(bits.group(1));
        int dataBits = words * Integer.parseInt(bits.group(2));
        List<Integer> checkBits = bits.group(3) == null ? List.of() : list(bits.group(3), Integer::parseInt);
        List<Voltage> voltages = list(sourced(FamilyFact.VOLTS), FamilyBlock::voltage);
        List<Grade> grades = list(sourced(FamilyFact.GRADES), this::grade);
        List<AccessTime> times = list(sourced(FamilyFact.ACCESS_TIMES),
                text -> AccessTime.ofNanoseconds(Integer.parseInt(text)));
        List<Capacity> sizes = list(sourced(FamilyFact.SIZES), this::capacity);
        check(sizes.size() == 2, "sizes");
        String standards = sourced(FamilyFact.STANDARDS);
        String remark = sourced(FamilyFact.REMARK);
        String channels = plain("channels");
        Family family = new Family(plain("id"), name,
                enums(plain("generation"), Generation.class), Form.valueOf(plain("form")),
                enums(plain("buffering"), Buffering.class),
                pins.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(pins)),
                faces.isEmpty() ? Faces.NONE : Faces.valueOf(faces.toUpperCase(Locale.ROOT)), notch, words,
                dataBits == 0 ? OptionalInt.empty() : OptionalInt.of(dataBits), checkBits,
                channels.isEmpty() ? 1 : Integer.parseInt(channels), voltages,
                new HashSet<>(list(plain("sure volts"), FamilyBlock::voltage)), plain("label"), grades, times,
                sizes.get(0), sizes.get(1), standards, remark, sources);
        check(lines.isEmpty(), lines.keySet().toString());
        return family;
    }

    private void check(boolean fine, String key) {
        if (!fine) {
            throw new IllegalStateException("The %s of the family that ends at line %d must be known and whole."
                    .formatted(key, end));
        }
    }

    private String plain(String key) {
        String value = lines.remove(key);
        return value == null ? "" : value;
    }

    private String sourced(FamilyFact fact) {
        String value = plain(fact.text());
        if (value.isEmpty()) {
            return "";
        }
        int bar = value.lastIndexOf(" | ");
        check(bar > 0, "source of the " + fact.text());
        String source = value.substring(bar + 3).strip();
        sources.put(fact, switch (source) {
            case "practice" -> Source.of(Ground.PRACTICE);
            case "memory" -> Source.of(Ground.MEMORY);
            default -> {
                String[] parts = source.split(";\\s*", 2);
                yield Source.document(parts[0], parts.length > 1 ? parts[1] : "");
            }
        });
        return value.substring(0, bar).strip();
    }

    private static <T> List<T> list(String text, Function<String, T> read) {
        List<T> all = new ArrayList<>();
        for (String part : text.split(LIST)) {
            if (!part.isBlank()) {
                all.add(read.apply(part.strip()));
            }
        }
        return all;
    }

    private static <E extends Enum<E>> Set<E> enums(String text, Class<E> type) {
        Set<E> all = EnumSet.noneOf(type);
        all.addAll(list(text, word -> Enum.valueOf(type, word)));
        return all;
    }

    private static Voltage voltage(String volts) {
        return Voltage.ofMillivolts(new BigDecimal(volts).movePointRight(3).intValueExact());
    }

    private Grade grade(String text) {
        Matcher parts = GRADE.matcher(text);
        check(parts.matches(), "grade " + text);
        Rate rate = Rate.of(Integer.parseInt(parts.group(1)));
        long exact = parts.group(3) == null
                ? rate.kilotransfers()
                : new BigDecimal(parts.group(3)).movePointRight(3).longValueExact();
        return new Grade(rate, parts.group(2), exact);
    }

    private Capacity capacity(String text) {
        Matcher parts = SIZE.matcher(text);
        check(parts.matches(), "size " + text);
        long number = Long.parseLong(parts.group(1));
        return switch (parts.group(2)) {
            case "KB" -> Capacity.ofKiB(number);
            case "MB" -> Capacity.ofMiB(number);
            default -> Capacity.ofGiB(number);
        };
    }
}
