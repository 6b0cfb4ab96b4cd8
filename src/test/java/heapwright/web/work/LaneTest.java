package heapwright.web.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@DisplayName("A lane")
@Timeout(60)
class LaneTest {

    private static final Duration LONG = Duration.ofMinutes(1);
    private static final IllegalStateException AWAY = new IllegalStateException("turned away");

    private static Lane lane(int workers, int waiting, Duration patience) {
        return new Lane("test", workers, waiting, patience, LONG);
    }

    private static Throwable fault(CompletableFuture<Void> done) {
        return assertThrows(CompletionException.class, done::join).getCause();
    }

    @Test
    @DisplayName("turns away what finds no room, and does the rest")
    void full() {
        try (Lane lane = lane(1, 1, LONG)) {
            CountDownLatch begun = new CountDownLatch(1);
            CountDownLatch go = new CountDownLatch(1);
            CompletableFuture<Void> first = lane.submit(
                    () -> {
                        begun.countDown();
                        go.await();
                    },
                    () -> AWAY);
            assertTrue(awaited(begun));
            CompletableFuture<Void> second = lane.submit(() -> {}, () -> AWAY);
            CompletableFuture<Void> third = lane.submit(() -> {}, () -> AWAY);
            assertEquals(AWAY, fault(third));
            assertFalse(second.isDone());
            go.countDown();
            first.join();
            second.join();
            lane.submit(() -> {}, () -> AWAY).join();
        }
    }

    @Test
    @DisplayName("turns away what waited too long, without doing it")
    void late() throws InterruptedException {
        // Long enough that the first, which nothing is before, is not turned away itself on a busy machine.
        Duration patience = Duration.ofMillis(800);
        try (Lane lane = lane(1, 5, patience)) {
            CountDownLatch begun = new CountDownLatch(1);
            CountDownLatch go = new CountDownLatch(1);
            lane.submit(
                    () -> {
                        begun.countDown();
                        go.await();
                    },
                    () -> AWAY);
            assertTrue(awaited(begun));
            AtomicBoolean done = new AtomicBoolean();
            CompletableFuture<Void> second = lane.submit(() -> done.set(true), () -> AWAY);
            Thread.sleep(patience.toMillis() + 100);
            go.countDown();
            assertEquals(AWAY, fault(second));
            assertFalse(done.get());
        }
    }

    @Test
    @DisplayName("hands on what the work failed with, an error of the machine too")
    void failed() {
        try (Lane lane = lane(1, 1, LONG)) {
            OutOfMemoryError error = new OutOfMemoryError("invented");
            assertEquals(
                    error,
                    fault(lane.submit(
                            () -> {
                                throw error;
                            },
                            () -> AWAY)));
            lane.submit(() -> {}, () -> AWAY).join();
        }
    }

    private static boolean awaited(CountDownLatch latch) {
        try {
            latch.await();
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
