/**
 * How much of a remedy this pile needs: one calculation for each {@link heapwright.knowledge.Dose}, its upper limits,
 * and the amount in the household's own measures.
 *
 * <p>Pure functions. Limits and material figures are arguments; words are made elsewhere from the structured result.
 */
package heapwright.process.dose;
