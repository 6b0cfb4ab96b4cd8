package heapwright.docs;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Compares made text without minding the rounding of another machine. */
final class Drift {
    private static final Pattern FIGURE = Pattern.compile("−?\\d+(?:\\.(\\d+))?");

    private Drift() {}

    /**
     * Whether two texts differ in no more than one unit of the last digit of their figures. Processors round powers
     * differently in the last place; that may move a figure on an edge by one unit.
     */
    static boolean alike(String one, String other) {
        if (!FIGURE.matcher(one).replaceAll("#").equals(FIGURE.matcher(other).replaceAll("#"))) {
            return false;
        }
        List<MatchResult> ours = FIGURE.matcher(one).results().toList();
        List<MatchResult> theirs = FIGURE.matcher(other).results().toList();
        for (int i = 0; i < ours.size(); i++) {
            String decimals = ours.get(i).group(1);
            double unit = Math.pow(10, decimals == null ? 0 : -decimals.length());
            if (Math.abs(value(ours.get(i)) - value(theirs.get(i))) > 1.01 * unit) {
                return false;
            }
        }
        return true;
    }

    private static double value(MatchResult figure) {
        return Double.parseDouble(figure.group().replace('−', '-'));
    }
}
