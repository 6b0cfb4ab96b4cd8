package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.Seed;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/**
 * Physics that must hold for any pile. Colder weather also draws more air and saves food for later, so comparisons of
 * warmth are made on piles without draught, and on active ones up to the peak.
 */
class MonotoneTest {
    /** The two runs choose their steps apart: differences up to this mean nothing. */
    private static final double ROUNDING_K = 0.15;

    @Provide
    Arbitrary<Matter> matters() {
        Arbitrary<Double> volume = Arbitraries.doubles().between(0.02, 8);
        Arbitrary<Double> density = Arbitraries.doubles().between(80, 1000);
        Arbitrary<Double> moisture = Arbitraries.doubles().between(0.05, 0.88);
        Arbitrary<Double> quick = Arbitraries.doubles().between(0, 0.6);
        Arbitrary<Double> slow = Arbitraries.doubles().between(0, 0.4);
        Arbitrary<Double> ratio = Arbitraries.doubles().between(8, 300);
        Arbitrary<Double> piece = Arbitraries.doubles().between(0.2, 40);
        Arbitrary<Double> acid = Arbitraries.doubles().between(0, 1);
        return Combinators.combine(volume, density, moisture, quick, slow, ratio, piece, acid)
                .as((v, d, m, q, s, r, p, a) ->
                        Matter.of(v, d, m, q, s, (1 - q - s) * 0.6, r, p).withAcid(a));
    }

    private static Constants stillAir() {
        Constants c = Constants.standard();
        return c.with(c.transport().varied(1, 1e-9));
    }

    private static Constants inert() {
        Constants c = stillAir();
        return c.with(c.kinetics().varied(0, 0, 0));
    }

    private static Course course(PileState start, double airC, int days, Constants c) {
        return HeatModel.run(start, Weather.constant(airC, days), List.of(), days, c);
    }

    @Property(tries = 60, seed = Seed.FIXED)
    void colderOutsideNeverWarmsAnIdlePile(
            @ForAll("matters") Matter m,
            @ForAll @DoubleRange(min = -30, max = 25) double airC,
            @ForAll @DoubleRange(min = 0.5, max = 15) double colder,
            @ForAll @DoubleRange(min = -10, max = 50) double startC) {
        PileState start = PileState.cube(m, startC, Envelope.slatted());
        Course mild = course(start, airC, 30, inert());
        Course cold = course(start, airC - colder, 30, inert());
        for (int d = 0; d < 30; d++) {
            assertTrue(cold.days().get(d).coreC() <= mild.days().get(d).coreC() + ROUNDING_K, "day " + d);
        }
    }

    @Property(tries = 60, seed = Seed.FIXED)
    void colderOutsideNeverRaisesThePeak(
            @ForAll @DoubleRange(min = 0.1, max = 3) double volume,
            @ForAll @DoubleRange(min = -20, max = 20) double airC,
            @ForAll @DoubleRange(min = 1, max = 15) double colder) {
        PileState start = PileState.cube(Fixtures.good(volume), 15, Envelope.slatted());
        double mild = course(start, airC, 60, stillAir()).peakC();
        double cold = course(start, airC - colder, 60, stillAir()).peakC();
        // The first overshoot lasts hours, and a reading once a day catches more or less of it.
        assertTrue(cold <= mild + 4, cold + " against " + mild);
    }

    @Property(tries = 60, seed = Seed.FIXED)
    void insulationNeverCoolsAWarmPile(
            @ForAll("matters") Matter m,
            @ForAll @DoubleRange(min = -30, max = 15) double airC,
            @ForAll @DoubleRange(min = 0.1, max = 5) double resistance) {
        Envelope bare = Envelope.bare();
        Envelope wrapped =
                new Envelope(resistance, resistance, resistance, 1, 1, 0.2, bare.rainShare(), bare.shelter());
        Course open = course(PileState.cube(m, 40, bare), airC, 30, inert());
        Course kept = course(PileState.cube(m, 40, wrapped), airC, 30, inert());
        for (int d = 0; d < 30; d++) {
            // Once as cool as the air both dry and stand a little below it, the insulated one more.
            if (open.days().get(d).coreC() > airC + 1) {
                assertTrue(kept.days().get(d).coreC() >= open.days().get(d).coreC() - ROUNDING_K, "day " + d);
            }
        }
    }

    @Property(tries = 60, seed = Seed.FIXED)
    void smallerPiecesNeverSlowDecayAtASteadyTemperature(
            @ForAll @DoubleRange(min = 0.3, max = 40) double coarse,
            @ForAll @DoubleRange(min = 0.1, max = 1) double share,
            @ForAll @DoubleRange(min = 5, max = 50) double celsius) {
        // A body so small that its own heat hardly warms it, and loose enough for diffusion.
        Matter m = Matter.of(0.00002, 350, 0.58, 0.25, 0.4, 0.2, 30, coarse);
        Envelope open = new Envelope(0, 0, 0, 1, 1, 1, 0, 0);
        double fine = decayed(m.withPieces(coarse * share), open, celsius);
        double rough = decayed(m, open, celsius);
        assertTrue(fine >= rough - 0.002, fine + " against " + rough);
    }

    private static double decayed(Matter m, Envelope envelope, double celsius) {
        Constants s = stillAir();
        Constants.Transport t = s.transport();
        // No drying: a warmer body would dry sooner, which is another matter.
        Constants c = s.with(new Constants.Transport(
                t.conductivityBase(),
                t.conductivityWater(),
                t.conductivityIce(),
                t.conductivityDry(),
                t.permeability(),
                t.heatRecovery(),
                1e9,
                t.soilConductivity()));
        return 1
                - course(PileState.cube(m, celsius, envelope), celsius, 20, c)
                        .last()
                        .foodLeftShare();
    }

    @Provide
    Arbitrary<List<Event>> events() {
        Arbitrary<Event> one = Combinators.combine(
                        Arbitraries.integers().between(0, 6),
                        Arbitraries.integers().between(0, 119),
                        Arbitraries.doubles().between(0, 200),
                        Arbitraries.doubles().between(0, 60))
                .as((kind, day, kg, celsius) -> switch (kind) {
                    case 0 -> new Event.Turn(day);
                    case 1 -> new Event.Loosen(day);
                    case 2 -> new Event.Water(day, kg, celsius);
                    case 3 ->
                        new Event.Cover(
                                day,
                                Envelope.slatted().topped(Layer.sealedSheet()).wrapped(Layer.sealedSheet()));
                    case 4 ->
                        new Event.Add(
                                day,
                                Matter.of(0.01 + kg / 500, 500, 0.7, 0.5, 0.3, 0.1, 15, 5),
                                celsius - 20,
                                kg > 100);
                    case 5 -> new Event.SnowIn(day, kg, -celsius / 2);
                    default -> new Event.Feed(day, kg / 100, kg, celsius);
                });
        return one.list().ofMaxSize(12);
    }

    @Property(tries = 150, seed = Seed.FIXED)
    void anyPileKeepsWithinWhatIsPossible(
            @ForAll("matters") Matter m,
            @ForAll("events") List<Event> events,
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = -35, max = 35) double airC,
            @ForAll @DoubleRange(min = 0, max = 20) double rain,
            @ForAll @IntRange(min = 3, max = 12) int shells) {
        Weather weather = Weather.constant(airC, 120).restless(seed, 6).withPrecipitation(rain);
        PileState start = PileState.cube(m, Math.max(-20, airC), Envelope.bare());
        Course course = HeatModel.run(start, weather, events, 120, Constants.standard(), shells);
        for (Day d : course.days()) {
            List<Double> all = new ArrayList<>(List.of(
                    d.coreC(),
                    d.midC(),
                    d.skinC(),
                    d.massKg(),
                    d.volumeM3(),
                    d.oxygenCore(),
                    d.carbonToNitrogen(),
                    d.heatW(),
                    d.respiration(),
                    d.phCore()));
            for (double figure : all) {
                assertTrue(Double.isFinite(figure), d.toString());
            }
            assertTrue(d.coreC() <= 80 && d.coreC() >= -80, d.toString());
            assertTrue(share(d.iceShare()) && share(d.moistureMean()) && share(d.foodLeftShare()), d.toString());
            assertTrue(share(d.nitrogenLostShare()) && share(d.airSpaceCore()), d.toString());
            assertTrue(d.oxygenCore() >= 0 && d.oxygenCore() <= 20.91, d.toString());
            assertTrue(d.massKg() > 0 && d.volumeM3() > 0, d.toString());
        }
        assertEquals(0, course.ledger().heatGap(), 1e-3);
        assertEquals(0, course.ledger().waterGap(), 1e-3);
        assertEquals(0, course.ledger().dryGap(), 1e-3);
        assertEquals(0, course.ledger().nitrogenGap(), 1e-3);
        // Never hotter than the food allows.
        double most = 14e6 * 1.3 * (course.ledger().dryStart() + course.ledger().dryBrought());
        assertTrue(course.ledger().heatReleased() <= most);
    }

    private static boolean share(double x) {
        return x >= -1e-9 && x <= 1 + 1e-9;
    }
}
