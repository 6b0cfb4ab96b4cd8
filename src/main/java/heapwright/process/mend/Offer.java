package heapwright.process.mend;

import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Density;

/**
 * A material that may be added.
 *
 * @param id id of the material, or {@link #WATER}
 * @param of its composition
 * @param densityKgM3 density in the pile, kg per cubic metre
 * @param bucketDensityKgM3 density as filled by hand, kg per cubic metre
 * @param mostKg the most there is, kg; infinite where as much as needed can be had
 * @param effortPerKg work for each kilogram, where one kilogram carried is 1
 * @param fertiliser whether it is concentrated nitrogen, of which only a part of the need may be given
 * @param carrierKg water that each kilogram is dissolved in, kg; 0 where it goes in as it is
 */
public record Offer(
        String id,
        Composition of,
        double densityKgM3,
        double bucketDensityKgM3,
        double mostKg,
        double effortPerKg,
        boolean fertiliser,
        double carrierKg) {

    /** Id of plain water. */
    public static final String WATER = "water";

    private static final double WATER_DENSITY = 1000;

    /** A kilogram of its nitrogen is weighed out, dissolved and given over several days: as much work as 200 kg; judgement. */
    private static final double FERTILISER_EFFORT = 200;

    /** A material of which there is so much, kg; infinite where as much as needed can be had. */
    public static Offer of(Material material, double mostKg) {
        boolean fertiliser = material.traits().contains(Trait.FAST_NITROGEN)
                || material.traits().contains(Trait.NITRATE);
        return new Offer(
                material.id(),
                Composition.ofSeason(material),
                Density.settled(material).likely(),
                Density.byHand(material).likely(),
                mostKg,
                fertiliser
                        ? Math.max(
                                1,
                                FERTILISER_EFFORT
                                        * Composition.ofSeason(material).nitrogen())
                        : 1,
                fertiliser,
                0);
    }

    /** As much water as needed; what it takes up in the pile is left out, so it makes it denser. */
    public static Offer water() {
        return new Offer(
                WATER,
                new Composition(100, 0, 0),
                Double.POSITIVE_INFINITY,
                WATER_DENSITY,
                Double.POSITIVE_INFINITY,
                1,
                false,
                0);
    }

    /** The same with the work counted by the bucket, so that light stuff is as heavy to carry as its volume. */
    public Offer byTheBucket(double bucketLitres) {
        return new Offer(
                id, of, densityKgM3, bucketDensityKgM3, mostKg, 1 / bucketKg(bucketLitres), fertiliser, carrierKg);
    }

    /** The same dissolved in so much water, kg for each kilogram, which is carried like any other. */
    public Offer dissolvedIn(double waterKg) {
        return new Offer(id, of, densityKgM3, bucketDensityKgM3, mostKg, effortPerKg + waterKg, fertiliser, waterKg);
    }

    /** The same with some of it taken. */
    public Offer less(double kg) {
        return atMost(Math.max(0, mostKg - kg));
    }

    Offer atMost(double kg) {
        return new Offer(
                id, of, densityKgM3, bucketDensityKgM3, Math.min(mostKg, kg), effortPerKg, fertiliser, carrierKg);
    }

    /** Mass of one bucket, kg. */
    public double bucketKg(double bucketLitres) {
        return bucketLitres * bucketDensityKgM3 / Density.LITRES_PER_M3;
    }
}
