package heapwright.journal;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * File names from what people call their piles. A slug has only a to z, 0 to 9 and single hyphens between them, at most
 * {@link #LONGEST} characters, and is no name that a system keeps for itself; so it is the same file everywhere,
 * whatever the alphabet of the system. Any text has one.
 */
final class Slug {

    static final int LONGEST = 60;

    private static final String OTHERWISE = "pile";

    /** Letters that do not come apart into a plain letter and a mark. */
    private static final Map<Integer, String> PLAIN = Map.ofEntries(
            Map.entry((int) 'ß', "ss"),
            Map.entry((int) 'æ', "ae"),
            Map.entry((int) 'œ', "oe"),
            Map.entry((int) 'ø', "o"),
            Map.entry((int) 'ł', "l"),
            Map.entry((int) 'đ', "d"),
            Map.entry((int) 'ð', "d"),
            Map.entry((int) 'þ', "th"),
            Map.entry((int) 'ħ', "h"),
            Map.entry((int) 'ŧ', "t"),
            Map.entry((int) 'ı', "i"));

    /** Names of devices, with which Windows opens the device, whatever the ending. */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul");

    private Slug() {}

    /** The slug of a text; the slug of a slug is itself. */
    static String of(String text) {
        StringBuilder slug = new StringBuilder();
        String apart = Normalizer.normalize(text, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
        apart.codePoints().forEach(point -> append(slug, point));
        String cut = trimmed(slug.length() > LONGEST ? slug.substring(0, LONGEST) : slug.toString());
        if (cut.isEmpty()) {
            return OTHERWISE;
        }
        return device(cut) ? OTHERWISE + "-" + cut : cut;
    }

    /** The first of {@code slug}, {@code slug-2}, {@code slug-3} … that is not taken. */
    static String free(String slug, Predicate<String> taken) {
        String free = slug;
        for (int number = 2; taken.test(free); number++) {
            free = slug + "-" + number;
        }
        return free;
    }

    private static void append(StringBuilder slug, int point) {
        boolean plain = point >= 'a' && point <= 'z' || point >= '0' && point <= '9';
        if (plain) {
            slug.append((char) point);
        } else if (PLAIN.containsKey(point)) {
            slug.append(PLAIN.get(point));
        } else if (!mark(point) && !slug.isEmpty() && slug.charAt(slug.length() - 1) != '-') {
            slug.append('-');
        }
    }

    private static boolean mark(int point) {
        int type = Character.getType(point);
        return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || point == '\'' || point == '’';
    }

    private static String trimmed(String slug) {
        return slug.endsWith("-") ? slug.substring(0, slug.length() - 1) : slug;
    }

    private static boolean device(String slug) {
        return DEVICES.contains(slug) || slug.matches("(com|lpt)[0-9]");
    }
}
