package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.casebook.JudgedCases;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Reads all that is told of every case by every door; some minutes. What the pairs are stands in {@link Contradiction}. */
@DisplayName("All that is told of one pile")
@Tag("thorough")
class OneVoiceTest {

    /** Other ways than leaving it alone take most of the time: they are looked at for each so many cases. */
    private static final int STRIDE = 5;

    private static final int FEW = 30;

    @Test
    @DisplayName("contradicts itself nowhere, in every case")
    void oneVoice() {
        List<String> wrong = new ArrayList<>();
        Set<String> doors = new TreeSet<>();
        List<JudgedCases.Judged> all = JudgedCases.all();
        for (int i = 0; i < all.size(); i++) {
            String file = all.get(i).tested().file();
            List<String> texts = new ArrayList<>();
            for (Answers.Answer answer : Answers.of(all.get(i).advice(), i % STRIDE == 0)) {
                doors.add(answer.door());
                String text = answer.text().replaceAll("[ \\n]+", " ");
                texts.add(text);
                String at = file + ", " + answer.door() + ": ";
                Contradiction.partsAboveTheWhole(text).forEach(told -> wrong.add(at + told + " of the whole"));
                Contradiction.endsOfTheirSpan(text).forEach(told -> wrong.add(at + told));
            }
            Contradiction.ALL.forEach(pair -> pair.in(texts).ifPresent(told -> wrong.add(file + ": " + told)));
            Contradiction.OneOf.ALL.forEach(one -> one.in(texts).ifPresent(told -> wrong.add(file + ": " + told)));
        }
        assertEquals(
                "", wrong.stream().limit(FEW).reduce("", (a, b) -> a + "\n" + b), wrong.size() + " contradictions");
        assertEquals(12, doors.size(), doors.toString());
        assertTrue(all.size() > 1700, "only " + all.size());
    }
}
