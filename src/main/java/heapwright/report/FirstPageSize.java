package heapwright.report;

import java.util.Arrays;
import java.util.function.IntFunction;
import java.util.regex.Pattern;

/** The size of a first page: what one leaf of paper holds and one look takes in. */
final class FirstPageSize {

    /** Lines of eighty letters; asked for by those who use it, as are the words. */
    static final int LINES = 45;

    static final int WORDS = 250;

    /** What counts as a word: not a dash or an arrow that stands alone. */
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]");

    private FirstPageSize() {}

    /**
     * The fullest page that fits.
     *
     * @param ways how much may be left out: the page is written with 0, 1 … ways - 1 of its lesser parts left away
     * @param page writes it
     */
    static String fullest(int ways, IntFunction<String> page) {
        String written = page.apply(0);
        for (int less = 1; less < ways && !fits(written); less++) {
            written = page.apply(less);
        }
        return written;
    }

    static boolean fits(String page) {
        return page.lines().count() <= LINES && words(page) <= WORDS;
    }

    private static long words(String page) {
        return Arrays.stream(page.strip().split("\\s+"))
                .filter(w -> WORD.matcher(w).find())
                .count();
    }
}
