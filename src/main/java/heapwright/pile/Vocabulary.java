package heapwright.pile;

import java.util.Collection;
import java.util.Map;

/** The ids a pile document may use; the knowledge base implements it, so that reading a file needs no knowledge of rules. */
public interface Vocabulary {

    /** Ids of signs. */
    Collection<String> signs();

    /** Ids of materials. */
    Collection<String> materials();

    /** Other names people use for a material, to its id; keys in lower case. */
    Map<String, String> materialAliases();

    /** Household measures, id to litres. */
    Map<String, Double> measures();

    /** Ids of limits, each with the span a person's own figure must lie in: low and high. */
    Map<String, double[]> limits();
}
