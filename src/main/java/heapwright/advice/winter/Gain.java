package heapwright.advice.winter;

import heapwright.process.heat.Range;

/**
 * What a step would win in the model, against leaving the pile alone.
 *
 * @param days time looked at, days
 * @param daysWon days by which the pile would get sooner to where it would stand at the end of the time looked at;
 *     negative when the step costs days
 * @param warmerC kelvin by which the core would be warmer on average
 * @param moreWarmDays more days with the core at 40 °C or above
 * @param with when the core would be back at 40 °C with the step
 * @param without when it would be back without it
 * @param frost chance that it freezes through
 * @param workedAlone part of its food that the pile works through in the time looked at when left alone, 0–1
 */
public record Gain(
        int days,
        Range daysWon,
        Range warmerC,
        Range moreWarmDays,
        Back with,
        Back without,
        Frost frost,
        Range workedAlone) {

    /** Below this part of the food there is no pace to measure days against (judgement). */
    private static final double ASLEEP = 0.05;

    /**
     * When a core comes back to 40 °C.
     *
     * @param already whether it is there now
     * @param chance part of the samples in which it comes back within the time looked at, 0–1
     * @param days from now; the time looked at where it does not come
     */
    public record Back(boolean already, double chance, Range days) {
        /** More likely than not. */
        public boolean likely() {
            return chance > 0.5;
        }
    }

    /**
     * Chance that half of the core's water freezes within the time looked at, 0-1.
     *
     * @param with with the step
     * @param without without it
     */
    public record Frost(double with, double without) {}

    /** Whether it freezes through for certain, with the step and without: days are no help to it then. */
    public boolean iced() {
        return frost.with() >= 1 && frost.without() >= 1;
    }

    /** Whether it counts what the step wakes and not the days: the pile sleeps, or freezes through whatever is done. */
    public boolean uncounted() {
        return asleep() || iced();
    }

    /**
     * Whether the pile, left alone, as good as sleeps all the time looked at. Days won say nothing then: the least
     * stir gets further than standing still. What counts is whether and when the step wakes it.
     */
    public boolean asleep() {
        return !without.already() && !without.likely() && workedAlone.likely() < ASLEEP;
    }

    /** The part of the time looked at that it wins, 0 to 1; of a sleeping pile, that by which it wakes sooner. */
    public double share() {
        double won = asleep() ? without.days().likely() - with.days().likely() : daysWon.likely();
        return Math.max(0, Math.min(1, won / days));
    }

    /** Whether it speaks for the step: that the whole band is won, or that the step wakes a pile that else would not be. */
    public boolean tells() {
        return uncounted() ? with.likely() && !without.likely() : daysWon.low() > 0;
    }

    /** Whether the whole band lies at or below nothing won. */
    public boolean useless() {
        return daysWon.high() <= 0;
    }
}
