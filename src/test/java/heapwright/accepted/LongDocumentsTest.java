package heapwright.accepted;

import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.pile.Pile;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
    private static final String HEAD = "'built': '2026-10-31', 'asOf': '2026-11-21', 'recipe': [";
    private static final String LEAVES = "{'material': 'leaves-mixed', 'amount': 200, 'unit': 'g'}";
    private static final String SCRAPS =
            "{'material': 'kitchen-scraps', 'amount': 20, 'unit': 'g', 'piece': {'value': %d, 'unit': 'mm'}}";

    @Test
    @DisplayName("of thousands of ingredients are worked through in seconds")
    void ingredients() {
        String recipe = times(500, i -> LEAVES);
        String log = times(
                        60,
                        day -> "{'date': '2026-11-" + (day % 20 + 1) + "', 'added': ["
                                + times(100, i -> String.format(SCRAPS, i + 1)) + "]}")
                .replaceAll("-11-(\\d)'", "-11-0$1'");
        answered(TestPile.of(HEAD + recipe + "], 'log': [" + log + "]"));
    }

    @Test
    @DisplayName("of thousands of readings on one day are worked through in seconds")
    void readings() {
        String log = times(
                5000,
                i -> "{'date': '2026-11-21', 'measured': {'core': {'value': " + (8 + i % 30) + ", 'unit': 'C'}}}");
        answered(TestPile.of(HEAD + LEAVES + ", " + LEAVES + "], 'log': [" + log + "]"));
    }

    private static void answered(Pile pile) {
        long before = THREADS.getCurrentThreadCpuTime();
        TestPile.ADVISOR.advise(pile);
        assertTrue(TestPile.ADVISOR.audit(pile, OptionalDouble.empty()).isPresent());
        Duration taken = Duration.ofNanos(THREADS.getCurrentThreadCpuTime() - before);
        assertTrue(taken.compareTo(ALLOWED) < 0, taken.toString());
    }

    private static String times(int count, java.util.function.IntFunction<String> item) {
        return IntStream.range(0, count).mapToObj(item).collect(Collectors.joining(","));
    }
}
