package heapwright.process.mixture;

import heapwright.knowledge.Material;
import heapwright.pile.Amount;
import java.util.OptionalDouble;

/**
 * One material in a mixture and how much of it.
 *
 * @param material what it is, with its effective figures
 * @param amount how much, by mass or by volume as filled by hand
 * @param pieceCm usual length of the pieces in centimetres, if stated
 * @param chopped whether it was chopped before it went in
 */
public record Portion(Material material, Amount amount, OptionalDouble pieceCm, boolean chopped) {

    /** @throws IllegalArgumentException when the amount is not finite or below zero */
    public Portion {
        double given = amount.isMass() ? amount.kilograms() : amount.litres();
        if (!Double.isFinite(given) || given < 0) {
            throw new IllegalArgumentException(
                    "An amount of " + material.id() + " must be zero or more and finite, but it is " + given + ".");
        }
    }

    public static Portion ofKilograms(Material material, double kilograms) {
        return new Portion(material, Amount.ofMass(kilograms, "kg", kilograms), OptionalDouble.empty(), false);
    }

    public static Portion ofLitres(Material material, double litres) {
        return new Portion(material, Amount.ofVolume(litres, "L", litres), OptionalDouble.empty(), false);
    }

    /** So many times as much of it. */
    public Portion times(double factor) {
        return new Portion(
                material,
                new Amount(
                        amount.value() * factor, amount.unit(), amount.kilograms() * factor, amount.litres() * factor),
                pieceCm,
                chopped);
    }

    /** Wet mass in kg: as weighed, or litres times the density of what is filled by hand. */
    public Band kgWet() {
        return amount.isMass()
                ? Band.exact(amount.kilograms())
                : Density.byHand(material).times(amount.litres() / Density.LITRES_PER_M3);
    }

    /** Volume in litres as filled by hand: as stated, or wet mass through the density. */
    public Band litres() {
        return amount.isMass()
                ? Density.byHand(material).map(density -> amount.kilograms() * Density.LITRES_PER_M3 / density)
                : Band.exact(amount.litres());
    }
}
