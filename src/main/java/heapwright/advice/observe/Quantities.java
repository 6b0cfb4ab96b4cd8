package heapwright.advice.observe;

import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.pile.Action;
import heapwright.pile.Container;
import heapwright.pile.Entry;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import heapwright.process.dose.Stocktaking;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Contribution;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.PileSize;
import heapwright.process.mixture.SizeDoubt;
import heapwright.process.sanitation.HeatRecord;
import heapwright.process.sanitation.Stretch;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * The quantities of a pile that the rules read: measured where something was measured lately, else worked out from the
 * recipe. A figure measured by a home grower carries the doubt of its method.
 */
public final class Quantities {

    /** Drying in a microwave oven: within 1 to 3 points (VICMW, published); the wider is taken. */
    private static final double MOISTURE_DOUBT = 3;

    /** A household thermometer in a pile; judgement. */
    private static final double TEMPERATURE_DOUBT = 1;

    /** Paper strips or a soil kit; judgement. */
    private static final double PH_DOUBT = 0.2;

    /** A bucket on bathroom scales, part of the value; judgement. */
    private static final double DENSITY_DOUBT = 0.05;

    /** A recipe says less of the moisture with every week of rain and drying: points a week, either way; judgement. */
    private static final double MOISTURE_DRIFT = 1;

    private static final double DAYS_A_WEEK = 7;

    /** For how many days a measured temperature holds; judgement. */
    private static final int WEEK = 7;

    private static final int TEMPERATURE_HOLDS = 7;

    private final Pile pile;
    private final Knowledge knowledge;
    private final Optional<Mixture> mixture;

    public Quantities(Pile pile, Knowledge knowledge, Optional<Mixture> mixture) {
        this.pile = pile;
        this.knowledge = knowledge;
        this.mixture = mixture;
    }

    /** The limits in force: the table's, or the person's own. */
    public List<LimitIs> limits() {
        return knowledge.limits().values().stream()
                .map(l -> new LimitIs(l.id(), pile.limits().getOrDefault(l.id().id(), l.value())))
                .toList();
    }

    /** The figure of one limit in force. */
    public double limit(Limit limit) {
        return pile.limits()
                .getOrDefault(limit.id(), knowledge.limits().get(limit).value());
    }

    /** Every reading that can be had, at most one of each kind, in the order of the kinds. */
    public List<Reads> readings() {
        Map<Reading, Reads> all = new EnumMap<>(Reading.class);
        mixture.map(this::fromRecipe).orElseGet(this::fromAdditions).forEach(r -> all.put(r.reading(), r));
        measured().forEach(r -> all.put(r.reading(), r));
        return new ArrayList<>(all.values());
    }

    private List<Reads> fromRecipe(Mixture mix) {
        List<Reads> readings = new ArrayList<>();
        double drift = MOISTURE_DRIFT * age() / DAYS_A_WEEK;
        Band moisture = mix.moisturePct();
        readings.add(new Reads(
                Reading.MOISTURE,
                Math.max(0, moisture.low() - drift),
                moisture.likely(),
                Math.min(100, moisture.high() + drift),
                Basis.ESTIMATED));
        readings.add(estimate(Reading.CARBON_TO_NITROGEN, mix.carbonToNitrogen()));
        readings.add(estimate(Reading.FREE_AIR_SPACE, mix.freeAirSpacePct()));
        readings.add(estimate(Reading.WET_DENSITY, mix.densityKgM3()));
        readings.add(estimate(Reading.WOODY_SHARE, Band.exact(mix.woodySharePct())));
        readings.add(estimate(Reading.ALL_CARBON_TO_NITROGEN, mix.allCarbonToNitrogen()));
        readings.add(estimate(Reading.COARSE_SHARE, Band.exact(mix.coarseSharePct())));
        readings.addAll(Loads.of(mix).readings());
        longestPiece().ifPresent(v -> readings.add(exact(Reading.LONGEST_PIECE, v)));
        readings.add(estimate(Reading.VOLUME, mix.settledM3()));
        return readings;
    }

    /** The longest pieces of the recipe that were not chopped, cm. */
    private OptionalDouble longestPiece() {
        return pile.recipe().stream()
                .filter(i -> !i.chopped())
                .flatMapToDouble(i -> i.pieceCm().stream())
                .max();
    }

    private static Reads estimate(Reading reading, Band band) {
        return new Reads(reading, band.low(), band.likely(), band.high(), Basis.ESTIMATED);
    }

    private List<Reads> measured() {
        List<Reads> readings = new ArrayList<>();
        int fresh = (int) limit(Limit.ANSWER_FRESH);
        latest(Measured::moisturePct, fresh)
                .ifPresent(v -> readings.add(around(Reading.MOISTURE, v, MOISTURE_DOUBT, 0, 100)));
        latest(Measured::bulkDensityKgM3, fresh)
                .ifPresent(v -> readings.add(around(Reading.WET_DENSITY, v, v * DENSITY_DOUBT, 0, Double.MAX_VALUE)));
        latest(Measured::ph, fresh).ifPresent(v -> readings.add(around(Reading.PH, v, PH_DOUBT, 0, 14)));
        OptionalDouble core = latest(Measured::coreC, TEMPERATURE_HOLDS);
        OptionalDouble outdoor = Outdoors.known(pile, latest(Measured::outdoorC, TEMPERATURE_HOLDS));
        core.ifPresent(v -> readings.add(temperature(Reading.CORE_TEMPERATURE, v, TEMPERATURE_DOUBT)));
        outdoor.ifPresent(v -> readings.add(temperature(Reading.OUTDOOR_TEMPERATURE, v, TEMPERATURE_DOUBT)));
        if (outdoor.isEmpty()) {
            Outdoors.usual(pile).ifPresent(readings::add);
        }
        readings.add(Outdoors.coldestSoon(pile));
        readings.add(Outdoors.coldestNext(pile));
        daysSinceCore().ifPresent(d -> readings.add(exact(Reading.CORE_READING_AGE, d)));
        if (core.isPresent() && outdoor.isPresent()) {
            readings.add(temperature(
                    Reading.CORE_EXCESS, core.getAsDouble() - outdoor.getAsDouble(), 2 * TEMPERATURE_DOUBT));
        }
        pile.log().stream()
                .filter(e -> daysAgo(e) >= 0)
                .flatMapToDouble(e -> e.measured().coreC().stream())
                .max()
                .ifPresent(v -> readings.add(temperature(Reading.PEAK_TEMPERATURE, v, TEMPERATURE_DOUBT)));
        Stretch hot = HeatRecord.sinceRawStuff(pile, knowledge)
                .at(limit(Limit.CORE_SANITISING))
                .nearest(limit(Limit.HEAT_PROOF_DAYS), (int) limit(Limit.HEAT_PROOF_TURNS))
                .orElseGet(Stretch::none);
        readings.add(exact(Reading.DAYS_AT_SANITISING_HEAT, hot.days().size()));
        readings.add(exact(Reading.TURNS_AT_SANITISING_HEAT, hot.turns().size()));
        size(readings);
        readings.add(sinceBuilt(Reading.AGE));
        OptionalInt turned = daysSinceTurn();
        readings.add(
                turned.isPresent()
                        ? exact(Reading.DAYS_SINCE_TURN, turned.getAsInt())
                        : sinceBuilt(Reading.DAYS_SINCE_TURN));
        openings(Reading.OPENINGS, WEEK).ifPresent(readings::add);
        openings(Reading.OPENINGS_OF_A_FORTNIGHT, 2 * WEEK).ifPresent(readings::add);
        return readings;
    }

    /** On how many of the last days it was opened or turned, as far as that was noted; empty where it was on none. */
    private Optional<Reads> openings(Reading reading, int days) {
        long opened = pile.log().stream()
                .filter(e -> daysAgo(e) >= 0 && daysAgo(e) < days)
                .filter(e -> e.done().contains(Action.OPENED) || e.done().contains(Action.TURNED_FULLY))
                .map(Entry::date)
                .distinct()
                .count();
        return opened > 0 ? Optional.of(exact(reading, opened)) : Optional.empty();
    }

    /**
     * The size as told, which beats what the recipe would fill. Where the two cannot belong together, the other figure
     * is told too: danger goes by the larger.
     */
    private void size(List<Reads> readings) {
        OptionalDouble height = latest(Measured::heightM, Integer.MAX_VALUE);
        if (height.isEmpty()) {
            height = pile.container().heightM();
        }
        height.ifPresent(v -> readings.add(exact(Reading.HEIGHT, v)));
        if (pile.container().kind() == Container.Kind.PIT) {
            // A height measured later is that of the stuff; the pit is as deep as it was dug.
            pile.container().heightM().ifPresent(v -> readings.add(exact(Reading.PIT_DEPTH, v)));
        }
        PileSize.told(pile).ifPresent(size -> readings.add(exact(Reading.VOLUME, size.volumeM3())));
        if (mixture.isPresent()) {
            SizeDoubt.of(pile, materials())
                    .ifPresent(d -> readings.add(new Reads(
                            Reading.DOUBTED_VOLUME,
                            d.settledM3(),
                            (d.settledM3() + d.looseM3()) / 2,
                            d.looseM3(),
                            Basis.ESTIMATED)));
        }
    }

    /**
     * What was added to a pile of unknown stuff, as a part of that pile: in the size told, else in the usual one. What
     * the whole is made of cannot be worked out from it.
     */
    private List<Reads> fromAdditions() {
        List<Contribution> added = MixtureCalculator.contributions(PileMixture.portions(pile, materials()));
        if (added.isEmpty()) {
            return List.of();
        }
        return Loads.of(added, Stocktaking.of(pile, materials(), new MixtureCalculator())).readings().stream()
                .filter(r -> r.likely() > 0)
                .toList();
    }

    private Materials materials() {
        return Materials.of(knowledge.materials(), pile.materials());
    }

    private static Reads around(Reading reading, double value, double doubt, double floor, double ceiling) {
        return new Reads(
                reading, Math.max(floor, value - doubt), value, Math.min(ceiling, value + doubt), Basis.MEASURED);
    }

    private static Reads temperature(Reading reading, double value, double doubt) {
        return new Reads(reading, value - doubt, value, value + doubt, Basis.MEASURED);
    }

    private static Reads exact(Reading reading, double value) {
        return new Reads(reading, value, value, value, Basis.REPORTED);
    }

    /** Days since the pile was built. */
    public int age() {
        return (int) Math.max(0, ChronoUnit.DAYS.between(pile.built(), pile.asOf()));
    }

    private Reads sinceBuilt(Reading reading) {
        return pile.builtAssumed()
                ? new Reads(
                        reading,
                        Math.max(0, age() - Pile.MAY_BE_YOUNGER),
                        age(),
                        age() + Pile.MAY_BE_OLDER,
                        Basis.ESTIMATED)
                : exact(reading, age());
    }

    private OptionalInt daysSinceCore() {
        return pile.log().stream()
                .filter(e -> e.measured().coreC().isPresent())
                .mapToInt(this::daysAgo)
                .filter(d -> d >= 0)
                .min();
    }

    private OptionalInt daysSinceTurn() {
        return pile.log().stream()
                .filter(e -> e.done().contains(Action.TURNED_FULLY))
                .mapToInt(this::daysAgo)
                .filter(d -> d >= 0)
                .min();
    }

    private int daysAgo(Entry entry) {
        return (int) ChronoUnit.DAYS.between(entry.date(), pile.asOf());
    }

    private OptionalDouble latest(Function<Measured, OptionalDouble> what, int withinDays) {
        OptionalDouble latest = OptionalDouble.empty();
        for (Entry entry : pile.log()) {
            int days = daysAgo(entry);
            OptionalDouble value = what.apply(entry.measured());
            if (value.isPresent() && days >= 0 && days <= withinDays) {
                latest = value;
            }
        }
        return latest;
    }
}
