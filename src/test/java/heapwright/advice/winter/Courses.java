package heapwright.advice.winter;

import heapwright.process.heat.Course;
import heapwright.process.heat.Day;
import heapwright.process.heat.Ledger;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Courses written by hand, of piles in which nothing is amiss but what a test says. */
final class Courses {

    static final int DAYS = 30;

    private static final Ledger NOTHING = new Ledger(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    private Courses() {}

    /** A day of a cubic metre of 500 kg, damp, with C:N 25 and pH 7. */
    static Day day(int day, double coreC, double outdoorC) {
        return new Sample().on(day, coreC, outdoorC);
    }

    static Course of(IntFunction<Day> days) {
        return new Course(IntStream.range(0, DAYS).mapToObj(days).toList(), NOTHING);
    }

    static Course core(IntToDoubleFunction coreC, double outdoorC) {
        return of(day -> day(day, coreC.applyAsDouble(day), outdoorC));
    }

    static Course core(double coreC, double outdoorC) {
        return core(day -> coreC, outdoorC);
    }

    /** What of a day a test may want otherwise. */
    record Sample(
            double iceShare,
            double moistureCore,
            double moistureMean,
            double ph,
            double ratio,
            double volumeM3,
            double massKg,
            double respiration) {

        Sample() {
            this(0, 0.57, 0.57, 7, 25, 1, 500, 20);
        }

        Sample ice(double share) {
            return new Sample(share, moistureCore, moistureMean, ph, ratio, volumeM3, massKg, respiration);
        }

        Sample damp(double core, double mean) {
            return new Sample(iceShare, core, mean, ph, ratio, volumeM3, massKg, respiration);
        }

        Sample acid(double other) {
            return new Sample(iceShare, moistureCore, moistureMean, other, ratio, volumeM3, massKg, respiration);
        }

        Sample lean(double carbonToNitrogen) {
            return new Sample(
                    iceShare, moistureCore, moistureMean, ph, carbonToNitrogen, volumeM3, massKg, respiration);
        }

        Sample dense(double kg, double m3) {
            return new Sample(iceShare, moistureCore, moistureMean, ph, ratio, m3, kg, respiration);
        }

        Sample breathing(double other) {
            return new Sample(iceShare, moistureCore, moistureMean, ph, ratio, volumeM3, massKg, other);
        }

        Day on(int day, double coreC, double outdoorC) {
            return new Day(
                    day,
                    coreC,
                    coreC,
                    outdoorC,
                    outdoorC,
                    iceShare,
                    iceShare,
                    moistureCore,
                    moistureMean,
                    15,
                    0.4,
                    ph,
                    ratio,
                    volumeM3,
                    1,
                    massKg,
                    massKg / 2,
                    0.8,
                    0,
                    10,
                    respiration);
        }
    }
}
