package heapwright.pile;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers written as text. */
final class Numbers {

    private static final Pattern NUMBER = Pattern.compile("\\s*([+-]?)(\\d{1,15})(?:[.,](\\d{1,15}))?\\s*%?\\s*");

    private static final Pattern PLAIN = Pattern.compile("-?\\d+(\\.\\d+)?");

    private Numbers() {}

    /** Whether a text is a number as JSON writes it. */
    static boolean plain(String text) {
        return PLAIN.matcher(text).matches();
    }

    /** The number that a text such as "12,5" seems to be. */
    static Optional<String> closest(String text) {
        Matcher number = NUMBER.matcher(text);
        if (!number.matches()) {
            return Optional.empty();
        }
        String sign = number.group(1).equals("-") ? "-" : "";
        String decimals = number.group(3) == null ? "" : "." + number.group(3);
        return Optional.of(sign + number.group(2).replaceFirst("^0+(?=\\d)", "") + decimals);
    }
}
