package heapwright.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.Finding;
import heapwright.advice.Headline;
import heapwright.advice.TestPile;
import heapwright.knowledge.Cause;
import heapwright.knowledge.CauseInfo;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** "Possible: … Very likely: …" reads as if the doubtful came first. */
@DisplayName("The headlines of the cases")
@Tag("thorough")
class HeadlinesOfCasesTest {

    @Test
    @DisplayName("name what is surer before what is less so, but for germs, which count when it is used")
    void surestFirst() {
        assertEquals(
                List.of(),
                JudgedCases.all().stream()
                        .filter(j -> !j.tested().file().startsWith("unfitted/"))
                        .filter(j -> rises(Headline.of(j.advice(), TestPile.KNOWLEDGE)))
                        .map(j -> j.tested().file())
                        .toList());
    }

    private static boolean rises(Headline headline) {
        List<Finding> troubles = headline.findings().stream()
                .filter(f -> TestPile.KNOWLEDGE.causes().get(f.cause()).kind() != CauseInfo.Kind.WELL)
                .filter(f -> f.cause() != Cause.PATHOGEN_RISK
                        || f == headline.findings().get(0))
                .toList();
        return IntStream.range(1, troubles.size())
                .anyMatch(i ->
                        troubles.get(i).grade().compareTo(troubles.get(i - 1).grade()) > 0);
    }
}
