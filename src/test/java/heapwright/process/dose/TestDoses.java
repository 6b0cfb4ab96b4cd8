package heapwright.process.dose;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Limit;
import heapwright.pile.Amount;
import heapwright.pile.Container;
import heapwright.pile.Stock;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Observed;
import heapwright.process.mixture.Portion;
import heapwright.process.mixture.TestMaterials;
import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Piles, limits and what is at hand for tests of doses. */
final class TestDoses {

    private static final MixtureCalculator CALCULATOR = new MixtureCalculator();

    /** A month that gives grass and leaves alike. */
    static final Supply OCTOBER = new Supply(Month.OCTOBER, true);

    private TestDoses() {}

    /** A pile in round figures: 500 kg at 60 % in a cubic metre, 45 % carbon, four fifths of it organic, no wood. */
    static PileStock plain(double carbonToNitrogen) {
        return new PileStock(
                Band.exact(500),
                Band.exact(200),
                Band.exact(60),
                Band.exact(90),
                Band.exact(carbonToNitrogen),
                0.8,
                Band.exact(1),
                500,
                0,
                60,
                Basis.ESTIMATED,
                Basis.MEASURED,
                Basis.REPORTED,
                Basis.MEASURED);
    }

    static PileStock mixed(Portion... portions) {
        return PileStock.of(CALCULATOR.mix(List.of(portions)));
    }

    static PileStock mixedAt(double moisturePct, Portion... portions) {
        return PileStock.of(CALCULATOR.mix(
                List.of(portions),
                new Observed(OptionalDouble.of(moisturePct), OptionalDouble.empty(), OptionalDouble.empty())));
    }

    static PileStock ofSize(double volumeM3) {
        return PileStock.ofSize(Band.exact(volumeM3), Basis.REPORTED, Observed.nothing());
    }

    static Stock some(String material) {
        return new Stock(material, Optional.empty());
    }

    static Stock litres(String material, double litres) {
        return new Stock(material, Optional.of(Amount.ofVolume(litres, "L", litres)));
    }

    static Stock kilograms(String material, double kg) {
        return new Stock(material, Optional.of(Amount.ofMass(kg, "kg", kg)));
    }

    static DoseAmount dose(Dose dose, PileStock stock, Stock... atHand) {
        return dose(dose, stock, TestLimits.LIMITS, atHand);
    }

    static DoseAmount dose(Dose dose, PileStock stock, Limits limits, Stock... atHand) {
        return DoseCalculator.calculate(dose, context(stock, limits, false, atHand));
    }

    static DoseContext context(PileStock stock, Limits limits, boolean cold, Stock... atHand) {
        return new DoseContext(
                stock,
                Shape.of(Container.unknown(), stock.volumeM3().likely()),
                limits,
                Materials.of(TestMaterials.all()),
                List.of(atHand),
                TestDoses.OCTOBER,
                cold);
    }

    static Limits with(Limit limit, double value) {
        Map<Limit, Double> values = new EnumMap<>(TestLimits.LIMITS.values());
        values.put(limit, value);
        return new Limits(values);
    }

    static Limits with(Limit one, double value, Limit other, double otherValue) {
        Map<Limit, Double> values = new EnumMap<>(with(one, value).values());
        values.put(other, otherValue);
        return new Limits(values);
    }

    static Band band(DoseAmount amount, Key key) {
        return amount.working().stream()
                .filter(term -> term.key() == key)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + key + " in " + amount))
                .value();
    }

    static double likely(DoseAmount amount, Key key) {
        return band(amount, key).likely();
    }
}
