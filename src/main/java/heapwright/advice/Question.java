package heapwright.advice;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Sign;
import java.util.Optional;

/**
 * An observation that would change the advice.
 *
 * @param sign what to look for
 * @param settles the chance that its answer changes what to do first, 0 to 1
 * @param change how much the answer is expected to move the likelihoods, summed over the causes
 * @param raises the cause that a yes would raise most, if any
 * @param lowers the cause that a yes would lower most, if any
 */
public record Question(Sign sign, double settles, double change, Optional<Cause> raises, Optional<Cause> lowers) {}
