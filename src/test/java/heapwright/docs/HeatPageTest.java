package heapwright.docs;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.heat.Behaviours;
import heapwright.process.heat.CoursePaper;
import heapwright.process.heat.CoursePicture;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@DisplayName("The page on heat")
class HeatPageTest {

    private static final Path PAGE = Path.of("docs", "method", "heat.md");
    private static final Path PICTURES = Path.of("docs", "method", "courses");

    @Test
    @DisplayName("gives the figures of the model as it is, to one unit of the last digit")
    void table() {
        made("behaviour", Behaviours.table());
    }

    @Tag("thorough")
    @Test
    @DisplayName("gives the scores on the published courses as they are, to one unit of the last digit")
    void courses() {
        made("courses", CoursePaper.text());
    }

    @Test
    @DisplayName("shows eight published courses beside the model as it is")
    void pictures() {
        StringBuilder shown = new StringBuilder();
        for (String id : CoursePicture.SHOWN) {
            Path file = PICTURES.resolve(id + ".svg");
            String wanted = CoursePicture.of(id);
            if (!Drift.alike(wanted, Papers.read(file))) {
                Papers.hold(file, wanted);
            }
            shown.append("![%s](courses/%s.svg)\n\n".formatted(CoursePicture.words(id), id));
        }
        made("pictures", shown.toString());
    }

    private static void made(String name, String wanted) {
        Pattern block = Pattern.compile("(?s)(<!-- made: " + name + " -->\\n\\n)(.*?)(\\n<!-- end -->)");
        String page = Papers.read(PAGE);
        MatchResult stands = block.matcher(page).results().findFirst().orElseThrow();
        if (!Drift.alike(wanted, stands.group(2))) {
            Papers.hold(PAGE, page.substring(0, stands.start(2)) + wanted + page.substring(stands.end(2)));
        }
    }

    @Test
    @DisplayName("notices a figure that drifted, but not the rounding of another machine")
    void notices() {
        assertTrue(Drift.alike("| 1 | a | 66 | yes |", "| 1 | a | 67 | yes |"));
        assertFalse(Drift.alike("| 1 | a | 66 | yes |", "| 1 | a | 68 | yes |"));
        assertFalse(Drift.alike("| 1 | a | 0.63 | yes |", "| 1 | a | 0.65 | yes |"));
        assertFalse(Drift.alike("| 1 | a | 66 | yes |", "| 1 | a | 66 | **NO** |"));
    }
}
