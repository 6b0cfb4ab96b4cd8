package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.TestPile;
import heapwright.advice.ready.Ready;
import heapwright.advice.ready.ReadyAnswer;
import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import heapwright.knowledge.Ripeness;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("thorough")
@DisplayName("The first page on ripeness and use")
class FirstPageOfReadyTest {

    private static final List<String> FOLDERS = List.of("ready", "demo", "winter");

    @Test
    @DisplayName(
            "keeps to 45 lines and 250 words, in either units, certifies nothing and names no day of harvest too early")
    void page() {
        Casebook casebook = new Casebook(TestPile.KNOWLEDGE);
        List<Case> all = new ArrayList<>();
        FOLDERS.forEach(f -> all.addAll(casebook.below(Path.of("cases", f))));
        assertTrue(all.size() > 60);
        for (Case one : all) {
            Advice advice = TestPile.ADVISOR.diagnose(one.pile());
            if (advice.alarm().isPresent()) {
                continue;
            }
            ReadyAnswer answer = Ready.of(advice, TestPile.KNOWLEDGE);
            for (Units units : Units.values()) {
                Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), units);
                String written = new FirstPageOfReady(words, false).write(answer);
                assertTrue(FirstPageSize.fits(written), () -> one.file() + "\n" + written);
                String full = new ReadyReport(words, false).write(answer);
                for (String comfort : List.of("is clean", "is safe", "is free", "is sanitised", "guaranteed")) {
                    assertFalse(written.contains(comfort) || full.contains(comfort), one.file() + ": " + comfort);
                }
                assertTrue(answer.grade() != Ripeness.NOT_YET || !written.contains("harvest what"), one.file());
                if (units == Units.US) {
                    assertFalse(written.contains(" L/m") || written.contains("°C"), () -> one.file() + "\n" + written);
                }
            }
        }
    }
}
