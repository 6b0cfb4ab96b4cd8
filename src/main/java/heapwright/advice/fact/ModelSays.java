package heapwright.advice.fact;

import heapwright.knowledge.ModelFinding;

/**
 * What the process model reads from the measured core temperatures of a pile whose recipe is known.
 *
 * @param says what
 * @param shortfallC kelvin by which the last measured core stands below what a healthy pile would have, 0 or more
 * @param degree how far it is so, above 0 to 1; a half where the model is at an edge between one finding and another
 */
public record ModelSays(ModelFinding says, double shortfallC, double degree) implements Graded {}
