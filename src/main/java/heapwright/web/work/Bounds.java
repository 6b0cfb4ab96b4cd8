package heapwright.web.work;

import java.time.Duration;

/**
 * How much work is done at once, and how much may wait for it.
 *
 * @param threads how many usual requests are worked on at once
 * @param waiting how many more of them may wait
 * @param patience how long one of them may wait before it is turned away
 * @param largeBody from how many bytes the body of a request counts as large; those are worked on one at a time
 * @param large how many requests with a large body may be here at once, the one that is worked on included
 * @param largePatience how long one of them may wait
 */
public record Bounds(int threads, int waiting, Duration patience, int largeBody, int large, Duration largePatience) {

    /**
     * For a machine at home. What is worked on keeps the cores busy; a few hundred people may wait at once, each for no
     * longer than anybody looks at an empty page. A document of 64 KiB is three years of weekly notes or more. Six large
     * bodies are 6 MiB at most, and the work on one takes about 32 MiB; both are measured in docs/method/limits.md.
     */
    public static Bounds usual() {
        int cores = Math.max(2, Runtime.getRuntime().availableProcessors());
        return new Bounds(cores, 200, Duration.ofSeconds(10), 64 * 1024, 6, Duration.ofSeconds(30));
    }
}
