package heapwright.process.mixture;

import heapwright.knowledge.Material;
import java.util.Arrays;

/**
 * The published equations for mixing materials, one method each. Masses in kg as they are, moisture in percent of wet
 * mass, carbon and nitrogen in percent of dry mass; C:N by mass. A result below zero means that the goal does not lie
 * between the two materials.
 */
public final class Equations {

    /** Share of carbon in volatile solids is 1 in 1.8 (CORNC, published; stated accuracy 2 to 10 %, GOT56, quoted). */

    /** Degradable fraction of volatile solids without lignin (CHAND80 through CORNLIG, from memory). */
    private static final double DEGRADABLE_WITHOUT_LIGNIN = 0.83;

    /** Loss of that fraction for each percent of lignin in volatile solids (CHAND80 through CORNLIG, from memory). */
    private static final double DEGRADABLE_LOST_PER_LIGNIN = 0.028;

    private Equations() {}

    /** Moisture from a weighing before and after drying (CORNM, quoted). */
    public static double moisturePct(double wet, double dry) {
        return 100 * (wet - dry) / wet;
    }

    /** Moisture of wet mass from moisture stated on dry mass: w = d / (1 + d). */
    public static double wetBasisPct(double dryBasisPct) {
        return 100 * dryBasisPct / (100 + dryBasisPct);
    }

    /** Bulk density in kg per litre from a bucket weighed empty and full (EAWAG after COOP02, published). */
    public static double bucketDensity(double emptyKg, double fullKg, double litres) {
        return (fullKg - emptyKg) / litres;
    }

    /** Wet mass that holds a dry mass. */
    public static double wetForDry(double dryKg, double moisturePct) {
        return dryKg / (1 - moisturePct / 100);
    }

    /** Moisture of a mix: Σ Q M / Σ Q (CORNM, quoted; BC98, published). */
    public static double mixMoisturePct(double[] kg, Composition... of) {
        double water = 0;
        for (int i = 0; i < kg.length; i++) {
            water += kg[i] * of[i].water();
        }
        return 100 * water / Arrays.stream(kg).sum();
    }

    /** C:N of a mix: Σ Q C (100 − M) / Σ Q N (100 − M) (CORNCN and BC98, published). */
    public static double mixCarbonToNitrogen(double[] kg, Composition... of) {
        double carbon = 0;
        double nitrogen = 0;
        for (int i = 0; i < kg.length; i++) {
            carbon += kg[i] * of[i].carbon();
            nitrogen += kg[i] * of[i].nitrogen();
        }
        return carbon / nitrogen;
    }

    /** Mass of the second material for a moisture goal: Q2 = Q1 (G − M1) / (M2 − G) (CORNM and BC98, published). */
    public static double secondForMoisture(double firstKg, double firstPct, double secondPct, double goalPct) {
        return firstKg * (goalPct - firstPct) / (secondPct - goalPct);
    }

    /** Mass of the second material for a C:N goal (BC98, published). */
    public static double secondForCarbonToNitrogen(double firstKg, Composition first, Composition second, double goal) {
        return firstKg * (goal * first.nitrogen() - first.carbon()) / (second.carbon() - goal * second.nitrogen());
    }

    /**
     * Masses of two materials that bring a given mass of a third to both goals at once (method of CORNSIM, published).
     *
     * @return the two masses in kg; a negative one means that this set cannot meet both goals
     * @throws IllegalArgumentException when the two materials pull the same way, so that there is no single answer
     */
    public static double[] twoForBoth(
            double fixedKg, Composition fixed, Composition a, Composition b, double moistureGoal, double ratioGoal) {
        double waterFixed = fixedKg * excessWater(fixed, moistureGoal);
        double carbonFixed = fixedKg * excessCarbon(fixed, ratioGoal);
        double waterA = excessWater(a, moistureGoal);
        double waterB = excessWater(b, moistureGoal);
        double carbonA = excessCarbon(a, ratioGoal);
        double carbonB = excessCarbon(b, ratioGoal);
        double determinant = waterA * carbonB - waterB * carbonA;
        if (Math.abs(determinant) < 1e-12) {
            throw new IllegalArgumentException("The two materials pull the same way, so they cannot meet two goals.");
        }
        return new double[] {
            (-waterFixed * carbonB + waterB * carbonFixed) / determinant,
            (-waterA * carbonFixed + waterFixed * carbonA) / determinant
        };
    }

    /** Water to add, kg: W = Q (G − M) / (100 − G) (derived from the moisture equation with pure water). */
    public static double waterToReach(double kg, double moisturePct, double goalPct) {
        return kg * (goalPct - moisturePct) / (100 - goalPct);
    }

    /** Amendment for a moisture goal in the form of the engineering handbook (NEH651, NEH637, from memory). */
    public static double handbookForMoisture(double mixKg, double mixPct, double amendmentPct, double goalPct) {
        return mixKg * (mixPct - goalPct) / (goalPct - amendmentPct);
    }

    /**
     * Amendment for a C:N goal in the form of the engineering handbook (NEH651, NEH637, from memory).
     *
     * @param nitrogenKg nitrogen in the mix before the amendment
     */
    public static double handbookForCarbonToNitrogen(
            double nitrogenKg, double mixRatio, Composition amendment, double amendmentRatio, double goal) {
        return nitrogenKg
                * (goal - mixRatio)
                * 10_000
                / (amendment.nitrogenPct() * (100 - amendment.moisturePct()) * (amendmentRatio - goal));
    }

    /** Carbon from ash, both percent of dry mass: C = (100 − ash) / 1.8 (CORNC, published). */
    public static double carbonFromAshPct(double ashPct) {
        return (100 - ashPct) / Material.ORGANIC_PER_CARBON;
    }

    /** Ash from carbon, both percent of dry mass, 0 to 100: the same rule turned round. */
    public static double ashFromCarbonPct(double carbonPct) {
        return Math.max(0, 100 - carbonPct * Material.ORGANIC_PER_CARBON);
    }

    /**
     * Degradable fraction of volatile solids, 0 to 0.83: B = 0.83 − 0.028 × lignin (CHAND80 through CORNLIG and HAUG93,
     * from memory). Not for raw Klason lignin of tree leaves, which is several times too high (JIN03, published).
     *
     * @param ligninPctVs lignin, percent of volatile solids
     */
    public static double degradableFraction(double ligninPctVs) {
        double fraction = DEGRADABLE_WITHOUT_LIGNIN - DEGRADABLE_LOST_PER_LIGNIN * ligninPctVs;
        return Math.max(0, Math.min(DEGRADABLE_WITHOUT_LIGNIN, fraction));
    }

    private static double excessWater(Composition of, double goalPct) {
        return of.water() - goalPct / 100;
    }

    private static double excessCarbon(Composition of, double goal) {
        return of.carbon() - goal * of.nitrogen();
    }
}
