package heapwright.web.site;

import com.github.benmanes.caffeine.cache.AsyncCache;
import com.github.benmanes.caffeine.cache.Caffeine;
import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.pile.Pile;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * Advice with the last piles at hand, so that a pile is worked out once and not at every view of it. Advice depends on
 * the pile, which holds its day, and on the rules and tables, which stay the same as long as the program runs; on nothing
 * else, so the pile itself is the key and no answer is ever out of date. Units and words come in only when a page is
 * written. Two who ask the same at once wait for one answer. What is kept is bounded by its weight in memory.
 */
public final class AdviceDesk {

    /** The part of the heap that may be filled with kept advice, and the most of it on a large machine, in bytes. */
    private static final int SHARE_OF_HEAP = 8;

    private static final long MOST = 64L << 20;

    private final Advisor advisor;
    private final AsyncCache<Pile, Advice> kept;

    AdviceDesk(Advisor advisor) {
        this(advisor, Math.min(MOST, Runtime.getRuntime().maxMemory() / SHARE_OF_HEAP));
    }

    /** @param room for kept advice, in bytes, near enough */
    AdviceDesk(Advisor advisor, long room) {
        this.advisor = advisor;
        this.kept = Caffeine.newBuilder()
                .maximumWeight(room)
                .weigher((Pile pile, Advice advice) -> AdviceWeight.bytes(pile))
                .executor(Runnable::run)
                .buildAsync();
    }

    /** The advice on a pile. */
    public Advice advise(Pile pile) {
        CompletableFuture<Advice> own = new CompletableFuture<>();
        CompletableFuture<Advice> first = kept.asMap().putIfAbsent(pile, own);
        if (first == null) {
            workOut(pile, own);
        }
        try {
            return (first == null ? own : first).join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e;
        }
    }

    /** Whether the advice on a pile is at hand. */
    boolean kept(Pile pile) {
        return kept.asMap().containsKey(pile);
    }

    /** What failed is not kept: the cache lets go of it by itself. */
    private void workOut(Pile pile, CompletableFuture<Advice> own) {
        try {
            own.complete(advisor.advise(pile));
        } catch (Throwable fault) {
            own.completeExceptionally(fault);
        }
    }
}
