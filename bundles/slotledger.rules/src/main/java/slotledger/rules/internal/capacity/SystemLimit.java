package slotledger.rules.internal.capacity;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import slotledger.model.unit.Capacity;

/**
 * The most memory an operating system uses, by the name an inventory gives it.
 *
 * @param least the smallest limit among the editions the name may mean; empty where none is known
 * @param most  the largest limit among them; empty where none is known
 */
public record SystemLimit(Optional<Capacity> least, Optional<Capacity> most) {

    private static final SystemLimit NONE = new SystemLimit(Optional.empty(), Optional.empty());
    private static final Capacity ALL_OF_32_BIT = Capacity.ofGiB(4);
    private static final int KEEP = 1000;
    private static final Map<String, SystemLimit> KNOWN = new ConcurrentHashMap<>();
    private static final Pattern BITS_64 = Pattern.compile("64|amd64");
    private static final Pattern BITS_32 = Pattern.compile("\\b(32|x86|i[3456]86)");

    /** What is known of the system with this name; nothing where it isn't Windows or no listed release. */
    public static SystemLimit of(String name) {
        SystemLimit known = KNOWN.get(name);
        if (known == null) {
            known = find(name);
            if (KNOWN.size() < KEEP) {
                KNOWN.put(name, known);
            }
        }
        return known;
    }

    private static SystemLimit find(String name) {
        String words = name.toLowerCase(Locale.ROOT);
        if (!words.contains("win") && !words.contains("hyper-v")) {
            return NONE;
        }
        boolean is64 = BITS_64.matcher(words).find();
        boolean is32 = !is64 && BITS_32.matcher(words).find();
        List<WindowsEdition> editions = WindowsEdition.meantBy(words);
        Capacity least = null;
        Capacity most = null;
        for (WindowsEdition edition : editions) {
            if (!is64 && edition.limit32().isPresent()) {
                least = smaller(least, edition.limit32().get());
                most = larger(most, edition.limit32().get());
            }
            if (!is32 && edition.limit64().isPresent()) {
                least = smaller(least, edition.limit64().get());
                most = larger(most, edition.limit64().get());
            }
        }
        if (most == null && is32) {
            return new SystemLimit(Optional.of(ALL_OF_32_BIT), Optional.of(ALL_OF_32_BIT));
        }
        return new SystemLimit(Optional.ofNullable(least), Optional.ofNullable(most));
    }

    private static Capacity smaller(Capacity one, Capacity other) {
        return one == null ? other : one.min(other);
    }

    private static Capacity larger(Capacity one, Capacity other) {
        return one == null || other.atLeast(one) ? other : one;
    }
}
