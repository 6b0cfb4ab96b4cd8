/**
 * Mending a recipe: the least extra work that brings moisture, C:N and density into their good ranges with what is at
 * hand, by linear programme; and what a pile will yield and when.
 */
package heapwright.process.mend;
