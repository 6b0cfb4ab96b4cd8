package heapwright.docs;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.heat.Behaviours;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The page on heat")
class HeatPageTest {

    private static final Path PAGE = Path.of("docs", "method", "heat.md");
    private static final Pattern TABLE = Pattern.compile("(?s)(<!-- made: behaviour -->\\n\\n)(.*?)(\\n<!-- end -->)");
    private static final Pattern FIGURE = Pattern.compile("−?\\d+(?:\\.(\\d+))?");

    @Test
    @DisplayName("gives the figures of the model as it is, to one unit of the last digit")
    void table() {
        String wanted = Behaviours.table();
        String page = Papers.read(PAGE);
        MatchResult stands = TABLE.matcher(page).results().findFirst().orElseThrow();
        if (!alike(wanted, stands.group(2))) {
            Papers.hold(PAGE, page.substring(0, stands.start(2)) + wanted + page.substring(stands.end(2)));
        }
    }

    @Test
    @DisplayName("notices a figure that drifted, but not the rounding of another machine")
    void notices() {
        assertTrue(alike("| 1 | a | 66 | yes |", "| 1 | a | 67 | yes |"));
        assertFalse(alike("| 1 | a | 66 | yes |", "| 1 | a | 68 | yes |"));
        assertFalse(alike("| 1 | a | 0.63 | yes |", "| 1 | a | 0.65 | yes |"));
        assertFalse(alike("| 1 | a | 66 | yes |", "| 1 | a | 66 | **NO** |"));
    }

    /** Processors round powers differently in the last place; that may move a figure on an edge by one unit. */
    private static boolean alike(String one, String other) {
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
