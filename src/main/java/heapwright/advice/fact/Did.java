package heapwright.advice.fact;

import heapwright.pile.Action;

/** Something was done to the pile. */
public record Did(Action action, int daysAgo) {

    /** Whether it was done before a day so many days ago, and not longer before than that. */
    public boolean shortlyBefore(int laterDaysAgo, double days) {
        return daysAgo > laterDaysAgo && daysAgo - laterDaysAgo <= days;
    }
}
