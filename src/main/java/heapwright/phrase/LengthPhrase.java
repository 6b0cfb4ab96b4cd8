package heapwright.phrase;

import heapwright.pile.LengthUnit;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the length that a person means by "3 ft", "90 cm", "4 feet 6 inches" or a bare number. */
public final class LengthPhrase {

    private static final Pattern PART = Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*([a-z]+|'|\"|)\\s*");

    private LengthPhrase() {}

    /**
     * The length in metres.
     *
     * @param bare the unit of a number that stands alone
     * @return empty where nothing was understood
     */
    public static OptionalDouble metres(String said, LengthUnit bare) {
        String text = said.strip()
                .toLowerCase(Locale.ROOT)
                .replace("’", "'")
                .replace("”", "\"")
                .replaceFirst("^(?:about|roughly|around|some|nearly) +", "")
                .replaceFirst("^(?:a|an|one) ", "1 ");
        Matcher part = PART.matcher(text);
        double metres = 0;
        int at = 0;
        while (at < text.length()) {
            if (!part.find(at) || part.start() != at) {
                return OptionalDouble.empty();
            }
            double value = Double.parseDouble(part.group(1).replace(',', '.'));
            // "3 ft 6" is six inches more to some and a slip to others, so it is asked again.
            LengthUnit unit = at > 0 && part.group(2).isEmpty() ? null : unit(part.group(2), bare);
            if (unit == null) {
                return OptionalDouble.empty();
            }
            metres += unit.to(LengthUnit.METRE, value);
            at = part.end();
        }
        return at == 0 ? OptionalDouble.empty() : OptionalDouble.of(metres);
    }

    private static LengthUnit unit(String word, LengthUnit bare) {
        String spelled =
                switch (word) {
                    case "" -> bare.symbol();
                    case "'" -> LengthUnit.FOOT.symbol();
                    case "\"" -> LengthUnit.INCH.symbol();
                    default -> word;
                };
        return Arrays.stream(LengthUnit.values())
                .filter(u -> u.spellings().contains(spelled))
                .findFirst()
                .orElse(null);
    }
}
