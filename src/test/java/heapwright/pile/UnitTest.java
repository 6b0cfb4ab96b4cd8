package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.Seed;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class UnitTest {

    private static final List<Unit[]> KINDS = List.of(
            MassUnit.values(),
            VolumeUnit.values(),
            LengthUnit.values(),
            TemperatureUnit.values(),
            DensityUnit.values(),
            PlainUnit.values());

    /** Two units of one kind. */
    record Pair(Unit from, Unit to) {}

    @Provide
    Arbitrary<Pair> pairs() {
        return Arbitraries.of(KINDS.stream()
                .filter(kind -> !(kind[0] instanceof PlainUnit))
                .flatMap(kind -> Stream.of(kind).flatMap(from -> Stream.of(kind).map(to -> new Pair(from, to))))
                .toList());
    }

    @Property(seed = Seed.FIXED)
    void thereAndBackIsTheSame(
            @ForAll("pairs") Pair pair, @ForAll @DoubleRange(min = -1000, max = 1_000_000) double value) {
        double back = pair.to().to(pair.from(), pair.from().to(pair.to(), value));
        assertEquals(value, back, Math.max(1, Math.abs(value)) * 1e-11);
    }

    @Property(seed = Seed.FIXED)
    void goingByAThirdUnitMakesNoDifference(
            @ForAll("pairs") Pair pair, @ForAll @DoubleRange(min = -100, max = 10_000) double value) {
        Unit[] kind = KINDS.stream()
                .filter(units -> List.of(units).contains(pair.from()))
                .findFirst()
                .orElseThrow();
        for (Unit third : kind) {
            double direct = pair.from().to(pair.to(), value);
            double byThird = third.to(pair.to(), pair.from().to(third, value));
            assertEquals(direct, byThird, Math.max(1e-9, Math.abs(direct)) * 1e-9 + 1e-9);
        }
    }

    @Example
    void theDefinitionsHold() {
        assertEquals(0.45359237, MassUnit.POUND.to(MassUnit.KILOGRAM, 1));
        assertEquals(16, MassUnit.POUND.to(MassUnit.OUNCE, 1));
        assertEquals(1000, MassUnit.TONNE.to(MassUnit.KILOGRAM, 1));
        assertEquals(3.785411784, VolumeUnit.US_GALLON.to(VolumeUnit.LITRE, 1));
        assertEquals(231, cubicInches(VolumeUnit.US_GALLON), 1e-12);
        assertEquals(2150.42, cubicInches(VolumeUnit.US_BUSHEL), 1e-11);
        assertEquals(1728, cubicInches(VolumeUnit.CUBIC_FOOT), 1e-11);
        assertEquals(27, VolumeUnit.CUBIC_YARD.to(VolumeUnit.CUBIC_FOOT, 1));
        assertEquals(1000, VolumeUnit.CUBIC_METRE.to(VolumeUnit.LITRE, 1));
        assertEquals(2.54, LengthUnit.INCH.to(LengthUnit.CENTIMETRE, 1));
        assertEquals(12, LengthUnit.FOOT.to(LengthUnit.INCH, 1));
        assertEquals(212, TemperatureUnit.CELSIUS.to(TemperatureUnit.FAHRENHEIT, 100));
        assertEquals(-40, TemperatureUnit.FAHRENHEIT.to(TemperatureUnit.CELSIUS, -40));
        assertEquals(0, TemperatureUnit.FAHRENHEIT.to(TemperatureUnit.CELSIUS, 32));
        Unit kilograms = DensityUnit.KILOGRAM_PER_CUBIC_METRE;
        assertEquals(16.018463373960142, DensityUnit.POUND_PER_CUBIC_FOOT.to(kilograms, 1), 1e-13);
        assertEquals(593.2764, DensityUnit.POUND_PER_CUBIC_YARD.to(kilograms, 1000), 1e-4);
        assertEquals(450, DensityUnit.KILOGRAM_PER_LITRE.to(kilograms, 0.45));
    }

    /** Metric figures stay as round as they were written. */
    @Example
    void metricConversionsStayRound() {
        assertEquals(0.035, MassUnit.GRAM.to(MassUnit.KILOGRAM, 35));
        assertEquals(0.035, VolumeUnit.MILLILITRE.to(VolumeUnit.LITRE, 35));
        assertEquals(0.35, LengthUnit.CENTIMETRE.to(LengthUnit.METRE, 35));
        assertEquals(7, LengthUnit.METRE.to(LengthUnit.CENTIMETRE, 0.07));
    }

    @Example
    void everySpellingMeansOneUnitAndSymbolsComeFirst() {
        for (Unit[] kind : KINDS) {
            UnitWords words = UnitWords.of(kind);
            for (Unit unit : kind) {
                assertEquals(unit.symbol(), unit.spellings().get(0));
                for (String spelling : unit.spellings()) {
                    assertEquals(unit, words.find(spelling).orElseThrow(), spelling);
                    assertEquals(
                            unit,
                            words.find(" " + spelling.toUpperCase(java.util.Locale.ROOT))
                                    .orElseThrow());
                }
            }
        }
        assertEquals(
                TemperatureUnit.FAHRENHEIT,
                UnitWords.of(TemperatureUnit.values()).find("º F").orElseThrow());
        assertTrue(UnitWords.of(TemperatureUnit.values()).find("K").isEmpty());
    }

    private static double cubicInches(VolumeUnit unit) {
        double cubicInchInLitres = Math.pow(LengthUnit.INCH.to(LengthUnit.CENTIMETRE, 1), 3) / 1000;
        return unit.to(VolumeUnit.LITRE, 1) / cubicInchInLitres;
    }
}
