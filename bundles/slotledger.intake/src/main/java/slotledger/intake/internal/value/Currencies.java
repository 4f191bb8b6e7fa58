package slotledger.intake.internal.value;

import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds currencies in texts: ISO 4217 codes and the symbols that belong to one currency of the trade's users. */
public final class Currencies {

    /** The dollar sign and "kr" stand for several currencies, so they are none of ours. */
    private static final Map<String,
            String> SYMBOLS = Map.of("€", "EUR", "£", "GBP", "ZŁ", "PLN", "EURO", "EUR", "US$", "USD",
            "KČ", "CZK", "FR.", "CHF", "SFR", "CHF");
    private static final Pattern SYMBOL = Pattern.compile("€|£|US\\$|(?<!\\p{L})(?:ZŁ|EURO|KČ|FR\\.|SFR)(?!\\p{L})");
    private static final Pattern CODE =
            Pattern.compile("(?<!\\p{L})(AUD|BGN|CAD|CHF|CZK|DKK|EUR|GBP|HUF|INR|JPY|NOK|NZD|PLN|"
            + "RON|SEK|USD|ZAR)(?!\\p{L})");
    /** Anything that can stand beside an amount of money. */
    private static final Pattern ANY = Pattern.compile(SYMBOL.pattern() + "|" + CODE.pattern() + "|\\$");

    private Currencies() {
    }

    /** The one currency a text names; empty where it names none or several. */
    public static Optional<Currency> in(String text) {
        String upper = Texts.upper(text);
        Set<Currency> found = new LinkedHashSet<>();
        Matcher code = CODE.matcher(upper);
        while (code.find()) {
            found.add(Currency.getInstance(code.group(1)));
        }
        Matcher symbol = SYMBOL.matcher(upper);
        while (symbol.find()) {
            found.add(Currency.getInstance(SYMBOLS.get(symbol.group())));
        }
        return found.size() == 1 ? Optional.of(found.iterator().next()) : Optional.empty();
    }

    /** The text without the names of currencies. */
    public static String without(String text) {
        return Texts.tidy(ANY.matcher(Texts.upper(text)).replaceAll(" "));
    }
}
