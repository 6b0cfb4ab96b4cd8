package heapwright.advice.fact;

import heapwright.knowledge.Id;

/** What an audit says of one topic, the best first. */
public enum Mark implements Id {
    FITS,
    SLOW,
    WRONG,
    OUT
}
