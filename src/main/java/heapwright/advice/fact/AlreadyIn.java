package heapwright.advice.fact;

import heapwright.knowledge.KeepOutClass;

/**
 * Stuff that stays out of a home pile went in.
 *
 * @param kind its class
 * @param nothingForkedThrough whether nothing may be forked, turned or fed in while it is in
 * @param stillIn whether nobody has taken it out since
 * @param daysAgo days since it last went in, or was last seen in it
 */
public record AlreadyIn(KeepOutClass kind, boolean nothingForkedThrough, boolean stillIn, int daysAgo) {}
