package heapwright.process.dose;

import static java.util.Map.entry;

import heapwright.knowledge.Limit;
import java.util.Map;

/** Plausible limits for tests; the shipped ones stand in the table. */
public final class TestLimits {

    public static final Limits LIMITS = new Limits(Map.ofEntries(
            entry(Limit.MOISTURE_STOPPED, 30.0),
            entry(Limit.MOISTURE_SLOW, 40.0),
            entry(Limit.MOISTURE_GOOD_LOW, 50.0),
            entry(Limit.MOISTURE_GOOD_HIGH, 60.0),
            entry(Limit.MOISTURE_OK_HIGH, 65.0),
            entry(Limit.MOISTURE_SATURATED, 70.0),
            entry(Limit.CN_AMMONIA, 20.0),
            entry(Limit.CN_GOOD_LOW, 25.0),
            entry(Limit.CN_GOOD_HIGH, 35.0),
            entry(Limit.CN_SLOW, 40.0),
            entry(Limit.CN_STARVED, 60.0),
            entry(Limit.FAS_BAD, 20.0),
            entry(Limit.FAS_POOR, 30.0),
            entry(Limit.DENSITY_GOOD_HIGH, 600.0),
            entry(Limit.VOLUME_SMALL, 0.76),
            entry(Limit.VOLUME_WINTER, 1.0),
            entry(Limit.UREA_MAX, 200.0),
            entry(Limit.NITROGEN_MAX, 100.0),
            entry(Limit.ASH_MAX, 1.0),
            entry(Limit.ASH_MASS_MAX, 2.0),
            entry(Limit.NITROGEN_FRACTION_LOW, 50.0),
            entry(Limit.NITROGEN_FRACTION_HIGH, 67.0),
            entry(Limit.NITROGEN_DOSE_INTERVAL, 14.0),
            entry(Limit.CARBON_MAX_SHARE, 30.0),
            entry(Limit.WATER_MAX_AT_ONCE, 60.0),
            entry(Limit.SOLUTION_MAX, 1.0)));

    private TestLimits() {}
}
