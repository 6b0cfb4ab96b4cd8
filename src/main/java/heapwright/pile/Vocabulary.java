package heapwright.pile;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The ids a pile document may use; the knowledge base implements it, so that reading a file needs no knowledge of rules. */
public interface Vocabulary {

    /** Ids of signs. */
    Collection<String> signs();

    /** Other words for a sign, such as its former ids, to its id; keys in lower case. */
    default Map<String, String> signAliases() {
        return Map.of();
    }

    /** Ids of steps that may have been advised. */
    default Collection<String> steps() {
        return List.of();
    }

    /** Ids of materials. */
    Collection<String> materials();

    /** Other names people use for a material, to its id; keys in lower case. */
    Map<String, String> materialAliases();

    /** Household measures, id to litres. */
    Map<String, Double> measures();

    /** Of the household measures those that are pressed and tied, id to kilograms: a bale weighs more than its volume loose. */
    default Map<String, Double> pressed() {
        return Map.of();
    }

    /** Other words for a household measure, to its id; the reader knows plurals in -s and -es by itself. */
    default Map<String, String> measureAliases() {
        return Map.of();
    }

    /** Ids of limits, each with the span a person's own figure must lie in: low and high. */
    Map<String, double[]> limits();

    /**
     * The usual figures of a material, from which a person's own may differ; empty where they are not known.
     *
     * @param material its id
     */
    default Optional<Chemistry> chemistry(String material) {
        return Optional.empty();
    }

    /**
     * What a material is made of, as far as C:N goes.
     *
     * @param carbonPct carbon, percent of the dry mass
     * @param carbonToNitrogen C:N by mass; zero where there is no organic carbon or no nitrogen
     * @param nitrogenPct nitrogen, percent of the dry mass
     */
    record Chemistry(double carbonPct, double carbonToNitrogen, double nitrogenPct) {}
}
