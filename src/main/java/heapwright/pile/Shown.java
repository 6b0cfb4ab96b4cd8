package heapwright.pile;

import java.math.BigDecimal;

/** How values are quoted in messages. */
final class Shown {

    private static final int LONGEST = 60;

    private Shown() {}

    /** Text in double quotes, shortened to 60 characters, control characters written as {@code \\u0007}. */
    static String quoted(String text) {
        return '"' + plain(text) + '"';
    }

    static String plain(String text) {
        StringBuilder shown = new StringBuilder();
        int count = 0;
        for (int i = 0; i < text.length(); ) {
            int point = text.codePointAt(i);
            if (count++ == LONGEST) {
                return shown.append('…').toString();
            }
            if (unprintable(point)) {
                shown.append(String.format("\\u%04x", point));
            } else {
                shown.appendCodePoint(point);
            }
            i += Character.charCount(point);
        }
        return shown.toString();
    }

    /** A number without an exponent or needless zeros: 12, 0.5, 1000000. */
    static String number(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    /** Control characters, unpaired surrogates and the marks that turn the direction of writing. */
    private static boolean unprintable(int point) {
        return Character.isISOControl(point)
                || point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE
                || point >= 0x202A && point <= 0x202E
                || point >= 0x2066 && point <= 0x2069;
    }
}
