package heapwright.phrase;

import heapwright.pile.LengthUnit;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the length that a person means by "3 ft", "90 cm", "4 feet 6 inches" or a bare number, and sides told as three. */
public final class LengthPhrase {

    private static final Pattern PART = Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*([a-z]+|'|\"|)\\s*");

    private static final Pattern EACH_WAY =
            Pattern.compile(" (?:each way|each side|on each side|a side|every way|all round|long)$");

    private static final Pattern BY = Pattern.compile("\\s*(?:x|×|\\*|\\bby\\b)\\s*");

    private static final Pattern BARE = Pattern.compile("[0-9]+(?:[.,][0-9]+)?");

    private static final int SIDES = 3;

    private LengthPhrase() {}

    /**
     * The sides of a pile in metres: its length, width and height, as "4 x 4 x 3 ft" or "1 m by 1 m by 80 cm", or one
     * length for all three, as "a metre each way". A number without a unit has that of the last.
     *
     * @param bare the unit where none is told
     * @return three lengths; empty where nothing was understood, or where two were told and the third is open
     */
    public static List<Double> sides(String said, LengthUnit bare) {
        String[] told = BY.split(plain(said));
        String last = told.length == 0 ? "" : told[told.length - 1];
        String unit = last.replaceFirst("^[0-9.,\\s]+", "");
        List<Double> metres = Arrays.stream(told)
                .map(t -> metres(BARE.matcher(t).matches() ? t + " " + unit : t, bare))
                .flatMap(m -> m.stream().boxed())
                .toList();
        if (metres.size() != told.length || told.length != 1 && told.length != SIDES) {
            return List.of();
        }
        return told.length == SIDES ? metres : Collections.nCopies(SIDES, metres.get(0));
    }

    private static String plain(String said) {
        String text = said.strip()
                .toLowerCase(Locale.ROOT)
                .replace("’", "'")
                .replace("”", "\"")
                .replaceFirst("^(?:about|roughly|around|some|nearly) +", "")
                .replaceFirst("^(?:a|an|one) ", "1 ");
        return EACH_WAY.matcher(text).replaceFirst("");
    }

    /**
     * The length in metres.
     *
     * @param bare the unit of a number that stands alone
     * @return empty where nothing was understood
     */
    public static OptionalDouble metres(String said, LengthUnit bare) {
        String text = plain(said);
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
