package heapwright.web.work;

import java.time.Duration;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/** Threads that work on requests in the order in which they came; only so many may wait, and only for so long. */
final class Lane implements AutoCloseable {

    private final ThreadPoolExecutor threads;
    private final Duration patience;
    private final Duration stop;

    /**
     * @param name of the threads
     * @param workers how many requests are worked on at once
     * @param waiting how many more may wait
     * @param patience how long one may wait
     * @param stop how long the work under way may take when the server is stopped
     */
    Lane(String name, int workers, int waiting, Duration patience, Duration stop) {
        AtomicInteger number = new AtomicInteger();
        this.threads = new ThreadPoolExecutor(
                workers, workers, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(waiting), task -> {
                    Thread thread = new Thread(task, name + "-" + number.incrementAndGet());
                    thread.setDaemon(true);
                    return thread;
                });
        this.patience = patience;
        this.stop = stop;
    }

    /** Some work, which may fail with what a handler fails with. */
    interface Work {
        void run() throws Exception;
    }

    /**
     * Does some work when its turn comes.
     *
     * @param turnedAway what the work fails with where there is no room for it, or its turn comes too late
     */
    CompletableFuture<Void> submit(Work work, Supplier<RuntimeException> turnedAway) {
        CompletableFuture<Void> done = new CompletableFuture<>();
        long since = System.nanoTime();
        try {
            threads.execute(() -> {
                if (System.nanoTime() - since > patience.toNanos()) {
                    done.completeExceptionally(turnedAway.get());
                } else {
                    run(work, done);
                }
            });
        } catch (RejectedExecutionException full) {
            done.completeExceptionally(turnedAway.get());
        }
        return done;
    }

    /** Whatever goes wrong reaches who waits for the answer, an error of the machine too. */
    private static void run(Work work, CompletableFuture<Void> done) {
        try {
            work.run();
            done.complete(null);
        } catch (Throwable fault) {
            done.completeExceptionally(fault);
        }
    }

    @Override
    public void close() {
        threads.shutdown();
        try {
            if (!threads.awaitTermination(stop.toMillis(), TimeUnit.MILLISECONDS)) {
                threads.shutdownNow();
            }
        } catch (InterruptedException e) {
            threads.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }
}
