package heapwright.phrase;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as people type them: a comma for the point, a long minus, "1½", "1/2" and "1 1/2", spaces round it. */
public final class NumberPhrase {

    private static final int LONGEST = 20;

    private static final Pattern PLAIN = Pattern.compile("-?[0-9]*\\.?[0-9]+");

    /** A whole number, if any, and a fraction of one- or two-figure parts. */
    private static final Pattern MIXED = Pattern.compile("(?:([0-9]+) +)?([0-9]{1,2}) ?/ ?([0-9]{1,2})");

    private static final Map<Character, String> SIGNS =
            Map.of('\u00bd', "1/2", '\u00bc', "1/4", '\u00be', "3/4", '\u2153', "1/3", '\u2154', "2/3");

    private NumberPhrase() {}

    /** The number, if it is one. */
    public static OptionalDouble number(String typed) {
        String plain = typed.strip()
                .replace(',', '.')
                .replace('\u2212', '-')
                .replace('\u2013', '-')
                .replace('\u2044', '/');
        if (plain.isEmpty() || plain.length() > LONGEST) {
            return OptionalDouble.empty();
        }
        if (PLAIN.matcher(plain).matches()) {
            return OptionalDouble.of(Double.parseDouble(plain));
        }
        String last = SIGNS.get(plain.charAt(plain.length() - 1));
        String spelled =
                last == null ? plain : (plain.substring(0, plain.length() - 1).strip() + " " + last).strip();
        Matcher mixed = MIXED.matcher(spelled);
        if (!mixed.matches() || Integer.parseInt(mixed.group(3)) == 0) {
            return OptionalDouble.empty();
        }
        double whole = mixed.group(1) == null ? 0 : Double.parseDouble(mixed.group(1));
        return OptionalDouble.of(whole + Double.parseDouble(mixed.group(2)) / Double.parseDouble(mixed.group(3)));
    }
}
