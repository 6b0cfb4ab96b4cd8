package heapwright.advice.winter;

import java.util.Arrays;

/** What goes up and down from day to day, made calm enough to be told. */
final class Smoothing {

    private static final int SMOOTH_DAYS = 3;
    private static final int SHORTEST_DAYS = 3;

    private Smoothing() {}

    /** What lasts a day or two goes with what was before it, at the beginning with what follows. */
    static void withoutBrief(Factor[] by) {
        int from = 0;
        for (int day = 1; day <= by.length; day++) {
            if (day == by.length || by[day] != by[from]) {
                boolean brief = day - from < SHORTEST_DAYS;
                if (brief && from > 0) {
                    Arrays.fill(by, from, day, by[from - 1]);
                } else if (brief && day < by.length) {
                    Arrays.fill(by, from, day, by[day]);
                }
                from = brief && from == 0 ? 0 : day;
            }
        }
    }

    /** The mean of each day and those beside it. */
    static double[] smoothed(double[] by) {
        double[] all = new double[by.length];
        for (int day = 0; day < by.length; day++) {
            int from = Math.max(0, day - SMOOTH_DAYS);
            int end = Math.min(by.length, day + SMOOTH_DAYS + 1);
            all[day] = Arrays.stream(by, from, end).average().orElse(0);
        }
        return all;
    }
}
