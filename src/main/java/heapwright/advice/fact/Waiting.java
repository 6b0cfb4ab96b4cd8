package heapwright.advice.fact;

import heapwright.knowledge.Evidence;

/** A row of evidence that waits for a fact; it is not itself something known of the pile. */
public interface Waiting {

    Evidence row();
}
