package heapwright.advice.winter;

import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.process.mixture.Portion;
import java.util.List;

/**
 * How warm stuff is on the day it is put together. It comes from a kitchen, a stable, a shed or the garden, and what was
 * gathered to be forked is not hard frozen: nobody forks ice, unless they say so. All figures are judgement.
 *
 * @param kitchen part of the heat that kitchen scraps can hold, 0–1
 * @param stable that of manure
 * @param shed that of what is kept dry: straw, hay, paper, sawdust, meal
 * @param frozen whether it was said to be frozen, or snow was in it
 */
public record Warmth(double kitchen, double stable, double shed, boolean frozen) {

    /** The least warmth of each, °C; what has no part in these lies outdoors, and holds no frost. */
    private static final double KITCHEN_C = 10;

    private static final double STABLE_C = 15;
    private static final double SHED_C = 5;
    private static final double THAWED_C = 0.5;

    /** Frozen stuff that can still be heaped is no colder, and stuff in the sun no warmer, °C. */
    private static final double COLDEST_C = -10;

    private static final double WARMEST_C = 25;

    /** Heat capacity of dry matter against that of water. */
    private static final double DRY = 0.25;

    /** Stuff no moister than this was kept dry: straw, hay, paper, meal; percent. */
    private static final double KEPT_DRY_PCT = 20;

    private static final double HUNDRED = 100;

    /** Of a usual mix, of which only that is known: nothing of it is warmer than outdoors. */
    static Warmth unknown() {
        return new Warmth(0, 0, 0, false);
    }

    /**
     * Of some portions.
     *
     * @param frozen whether it was said to be frozen, or snow was in it
     */
    static Warmth of(List<Portion> portions, boolean frozen) {
        double all = 0;
        double kitchen = 0;
        double stable = 0;
        double shed = 0;
        for (Portion one : portions) {
            double water = one.material().moisturePct().typical() / HUNDRED;
            double heat = one.kgWet().likely() * (water + DRY * (1 - water));
            all += heat;
            switch (place(one.material())) {
                case KITCHEN -> kitchen += heat;
                case STABLE -> stable += heat;
                case SHED -> shed += heat;
                case GARDEN -> {}
            }
        }
        return all > 0 ? new Warmth(kitchen / all, stable / all, shed / all, frozen) : unknown();
    }

    /** Where stuff is before it goes in. */
    private enum Place {
        KITCHEN,
        STABLE,
        SHED,
        GARDEN
    }

    private static Place place(Material material) {
        if (material.traits().contains(Trait.KITCHEN)) {
            return Place.KITCHEN;
        }
        if (material.group() == Material.Group.MANURE) {
            return Place.STABLE;
        }
        return material.moisturePct().typical() <= KEPT_DRY_PCT ? Place.SHED : Place.GARDEN;
    }

    /** The warmth of it all where it is so warm outdoors, °C. */
    double celsius(double airC) {
        if (frozen) {
            return Math.max(COLDEST_C, Math.min(WARMEST_C, airC));
        }
        double mixed = kitchen * Math.max(KITCHEN_C, airC)
                + stable * Math.max(STABLE_C, airC)
                + shed * Math.max(SHED_C, airC)
                + (1 - kitchen - stable - shed) * Math.max(THAWED_C, airC);
        return Math.min(WARMEST_C, mixed);
    }
}
