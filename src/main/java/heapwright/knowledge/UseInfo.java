package heapwright.knowledge;

import heapwright.pile.Aim;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A use of compost and how much of it.
 *
 * @param id its id
 * @param name what it is called
 * @param kind how the amount is told
 * @param low the least, cm or percent by volume
 * @param usual as much as is advised
 * @param high the most
 * @param often how often
 * @param needs how ripe it must be
 * @param food whether what grows there is eaten
 * @param climate where it is told
 * @param aims the wishes of a pile that it answers
 * @param note what else
 * @param sources keys of sources
 * @param known how the amount is known
 */
public record UseInfo(
        String id,
        String name,
        Kind kind,
        double low,
        double usual,
        double high,
        String often,
        Ripeness needs,
        boolean food,
        Climate climate,
        List<Aim.Use> aims,
        String note,
        List<String> sources,
        Known known) {
    public UseInfo {
        aims = List.copyOf(aims);
        sources = List.copyOf(sources);
    }

    /** How an amount is told. */
    public enum Kind implements Id {
        /** As a layer, cm. */
        DEPTH,
        /** As a part of a mix, percent by volume. */
        SHARE,
        /** Not at all: better none. */
        NONE
    }

    /** Where a row is told. */
    public enum Climate implements Id {
        ANY,
        COOL,
        WARM
    }

    UseInfo reworded(UnaryOperator<String> wording) {
        return new UseInfo(
                id,
                name,
                kind,
                low,
                usual,
                high,
                often,
                needs,
                food,
                climate,
                aims,
                wording.apply(note),
                sources,
                known);
    }
}
