package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.casebook.JudgedCases;
import heapwright.pile.Pile;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How many questions it takes until the first step is the one that the full answers give. Every 41st case of those that answer
 * anything, or as {@code -Dquestions.every=22 -Dquestions.from=0} has it; none of {@code unfitted}, none with a measured
 * core, since the trials of the model take minutes, and none whose answers contradict each other, since nobody is asked for
 * what cannot be so beside what was told.
 */
@DisplayName("The order of the questions")
@Tag("thorough")
class QuestioningTest {

    private static final int EVERY = Integer.getInteger("questions.every", 41);
    private static final int FROM = Integer.getInteger("questions.from", 0);

    /** As measured when this was written, with a small margin: docs/method/score.md. */
    private static final double MOST_SHARE = 0.80;

    @Test
    @DisplayName("needs fewer questions than the order of the table of signs")
    void fewer() {
        Questioning questioning = new Questioning(TestPile.ADVISOR);
        int telling = 0;
        int fixed = 0;
        for (Pile pile : some()) {
            telling += questioning.about(pile, questioning.telling()).questions();
            fixed += questioning.about(pile, questioning.fixed()).questions();
        }
        System.out.println(telling + " questions against " + fixed);
        assertTrue(telling <= MOST_SHARE * fixed, telling + " against " + fixed);
    }

    private static List<Pile> some() {
        List<Pile> all = JudgedCases.all().stream()
                .filter(j -> !j.tested().file().startsWith("unfitted/"))
                .map(j -> j.tested().pile())
                .filter(p -> !Questioning.told(p).isEmpty())
                .filter(p -> p.log().stream().allMatch(e -> e.measured().coreC().isEmpty()))
                .filter(p -> TestPile.ADVISOR.diagnose(p).contradictions().isEmpty())
                .toList();
        return IntStream.range(0, all.size())
                .filter(i -> i % EVERY == FROM)
                .mapToObj(all::get)
                .toList();
    }
}
