package heapwright.accepted;

import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.load.LongDocuments;
import heapwright.pile.Pile;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * The longest documents that the reader takes. What grows faster than the document took half a minute and more. What counts is
 * the time that the processor spent, since a build may share it with others.
 */
@DisplayName("The longest documents")
class LongDocumentsTest {

    private static final Duration ALLOWED = Duration.ofSeconds(6);
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    @Test
    @DisplayName("of thousands of ingredients are worked through in seconds")
    void ingredients() {
        answered(LongDocuments.ingredients(60));
    }

    @Test
    @DisplayName("of thousands of readings on one day are worked through in seconds")
    void readings() {
        answered(LongDocuments.readingsOnADay(""));
    }

    private static void answered(String document) {
        Pile pile = TestPile.read(document);
        long before = THREADS.getCurrentThreadCpuTime();
        TestPile.ADVISOR.advise(pile);
        assertTrue(TestPile.ADVISOR.audit(pile, OptionalDouble.empty()).isPresent());
        Duration taken = Duration.ofNanos(THREADS.getCurrentThreadCpuTime() - before);
        assertTrue(taken.compareTo(ALLOWED) < 0, taken.toString());
    }
}
