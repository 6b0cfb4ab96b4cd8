package heapwright.advice.fact;

/** A fact that may be so in part. What a rule says on several facts counts in the least of their degrees. */
public interface Graded {

    /** How far it is so, 0 to 1. */
    double degree();
}
