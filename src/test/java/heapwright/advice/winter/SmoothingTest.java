package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What goes up and down from day to day")
class SmoothingTest {

    /** A letter a day: w for water, a for air, c for cold. */
    private static Factor[] days(String letters) {
        return letters.chars()
                .mapToObj(c -> c == 'w' ? Factor.WATER : c == 'a' ? Factor.AIR : Factor.COLD)
                .toArray(Factor[]::new);
    }

    private static void evened(String letters, String told) {
        Factor[] by = days(letters);
        Smoothing.withoutBrief(by);
        assertArrayEquals(days(told), by, () -> letters + " became " + Arrays.toString(by));
    }

    @Test
    @DisplayName("is told from three days on, and goes with what was before it below that")
    void brief() {
        evened("wwwaawww", "wwwwwwww");
        evened("wwwaaawww", "wwwaaawww");
        evened("wwwaacca", "wwwwwwww");
        evened("wwwwa", "wwwww");
    }

    @Test
    @DisplayName("goes at the beginning with what follows, and stands alone where nothing does")
    void atTheBeginning() {
        evened("aawww", "wwwww");
        evened("aacccww", "ccccccc");
        evened("aa", "aa");
        evened("", "");
    }

    @Test
    @DisplayName("is smoothed over three days before and after, and over fewer at the ends")
    void smoothed() {
        double[] by = {7, 0, 0, 0, 0, 0, 0, 14};
        assertArrayEquals(
                new double[] {7 / 4.0, 7 / 5.0, 7 / 6.0, 1, 14 / 7.0, 14 / 6.0, 14 / 5.0, 14 / 4.0},
                Smoothing.smoothed(by),
                1e-9);
    }
}
