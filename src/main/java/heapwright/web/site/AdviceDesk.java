package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.pile.Pile;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Advice with the last piles at hand: a result, its print, its JSON and its calendar are one piece of advice. The same
 * pile gets the same advice, so nothing is ever out of date. Two who ask the same at once wait for one answer.
 */
public final class AdviceDesk {

    private static final int KEPT = 16;

    private final Advisor advisor;
    private final Map<Pile, FutureTask<Advice>> kept = new LinkedHashMap<>(KEPT, 0.75f, true);

    AdviceDesk(Advisor advisor) {
        this.advisor = advisor;
    }

    /** The advice on a pile. */
    public Advice advise(Pile pile) {
        FutureTask<Advice> task = new FutureTask<>(() -> advisor.advise(pile));
        FutureTask<Advice> first;
        synchronized (kept) {
            first = kept.putIfAbsent(pile, task);
            if (kept.size() > KEPT) {
                kept.remove(kept.keySet().iterator().next());
            }
        }
        if (first == null) {
            task.run();
        }
        return get(first == null ? task : first, pile);
    }

    private Advice get(FutureTask<Advice> task, Pile pile) {
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CompletionException(e);
        } catch (ExecutionException e) {
            synchronized (kept) {
                kept.remove(pile, task);
            }
            throw new CompletionException(e.getCause());
        }
    }
}
