package heapwright.advice.winter;

import heapwright.advice.fact.Reads;
import heapwright.knowledge.Sign;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import heapwright.process.heat.CoreReading;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Setup;
import heapwright.process.heat.Stage;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Weather;
import heapwright.process.mixture.Footprint;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.PileSize;
import heapwright.process.mixture.Portion;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A pile file as the process model takes it: day 0 is the day it was built.
 *
 * @param pile the file
 * @param start the pile as built
 * @param climate the weather from day 0 to the end of the look ahead
 * @param events what was done up to the day of advice
 * @param cores core temperatures measured up to then
 * @param marks what was measured or felt of its water and acid
 * @param age days from building to the day of advice, 0 or more
 * @param ahead days from the day of advice to the end of the look ahead, 30 or more
 * @param warmth how warm its stuff was when it was put together
 * @param typical whether a typical mix stands in for a recipe that is not told
 * @param warmOnce whether it was ever warm, by what was felt and measured
 */
public record PileModel(
        Pile pile,
        PileState start,
        Climate climate,
        List<Event> events,
        List<CoreReading> cores,
        List<StateMark> marks,
        int age,
        int ahead,
        Warmth warmth,
        boolean typical,
        WarmOnce warmOnce) {

    /** Older piles are past what the model is for. */
    private static final int OLDEST_DAYS = 900;

    private static final int LEAST_AHEAD = 30;
    private static final int MOST_AHEAD = 420;
    /** A look ahead reaches to the first of this month of the next spring. */
    private static final int SPRING_MONTH = 5;

    private static final int SPRING_MONTH_SOUTH = 11;

    /** Larger heaps are no home piles; the model's shells and constants say nothing of them. */
    private static final double MOST_KG = 50_000;

    private static final double MOST_VOLUME = 100;

    /** Less than this is nothing to run a model on, kg. */
    private static final double LEAST_KG = 0.01;

    /** A pile found frozen through within so many days was put together so (judgement). */
    private static final int JUST_BUILT = 7;

    public PileModel {
        events = List.copyOf(events);
        cores = List.copyOf(cores);
        marks = List.copyOf(marks);
    }

    /**
     * Why there is no model of a pile with this recipe; empty where there is one.
     */
    public static Optional<WhyUnmodelled> lacking(Pile pile, Materials materials) {
        if (pile.recipe().isEmpty()) {
            return Optional.of(beyond(pile, materials).orElse(WhyUnmodelled.NO_RECIPE));
        }
        Pile begun = begun(pile);
        return beyond(begun, materials)
                .or(() -> Optional.of(WhyUnmodelled.TOO_LITTLE).filter(why -> firstKg(begun, materials) <= LEAST_KG));
    }

    /** What no recipe would help with. */
    private static Optional<WhyUnmodelled> beyond(Pile pile, Materials materials) {
        if (pile.container().kind().worksCold()) {
            return Optional.of(WhyUnmodelled.COLD_KIND);
        }
        if (age(pile) > OLDEST_DAYS) {
            return Optional.of(WhyUnmodelled.TOO_OLD);
        }
        boolean large = kilograms(pile, materials) > MOST_KG
                || pile.recipe().isEmpty() && pile.container().builtVolumeM3().orElse(0) > MOST_VOLUME;
        return large ? Optional.of(WhyUnmodelled.TOO_LARGE) : Optional.empty();
    }

    /**
     * The model of a pile with a recipe.
     *
     * @param readings what is read of it on the day of advice
     * @param seen the signs seen lately
     * @return empty where {@link #lacking} says why
     */
    public static Optional<PileModel> of(
            Pile pile, Materials materials, Collection<Reads> readings, Collection<Sign> seen) {
        if (lacking(pile, materials).isPresent()) {
            return Optional.empty();
        }
        Pile begun = begun(pile);
        List<Portion> first = first(begun, materials);
        boolean allThere = PileMixture.inOneGo(begun);
        Matter matter = RecipeMatter.of(
                first,
                PileSize.built(begun.container())
                        .map(size -> new PileSize.Built(size.m3(), size.filled() && allThere)));
        return Optional.of(made(
                begun,
                materials,
                matter,
                RecipeMatter.stage(first, matter),
                Warmth.of(first, frozen(begun, seen)),
                readings,
                seen,
                false));
    }

    /**
     * A pile of unknown stuff: a usual mix in the size told.
     *
     * @return empty where it is older or larger than the model is for
     */
    public static Optional<PileModel> typical(Pile pile, Materials materials) {
        if (beyond(pile, materials).isPresent()) {
            return Optional.empty();
        }
        double told = pile.container()
                .builtVolumeM3()
                .orElseGet(() -> PileSize.usualM3(pile.container().kind()).likely());
        double volume = Math.max(0.02, Math.min(MOST_VOLUME, told));
        Matter matter = Matter.of(volume, 500, 0.56, 0.2, 0.4, 0.25, 30, 5);
        return Optional.of(made(pile, materials, matter, Stage.fresh(), Warmth.unknown(), List.of(), List.of(), true));
    }

    /** The pile from the day on which the first of its recipe went in: before that there was nothing to work. */
    private static Pile begun(Pile pile) {
        return pile.recipe().stream()
                .map(Ingredient::date)
                .min(Comparator.naturalOrder())
                .filter(day -> day.isAfter(pile.built()))
                .map(pile::builtOn)
                .orElse(pile);
    }

    /** What went in on the first day; so much of it as the size told asks for. */
    private static List<Portion> first(Pile pile, Materials materials) {
        double times = PileMixture.timesTheRecipe(pile, materials);
        return pile.recipe().stream()
                .filter(i -> !i.date().isAfter(pile.built()))
                .map(i -> portion(i, materials).times(times))
                .toList();
    }

    private static double firstKg(Pile pile, Materials materials) {
        return first(pile, materials).stream()
                .mapToDouble(p -> p.kgWet().likely())
                .sum();
    }

    /** All that went in, as it is, kg. */
    private static double kilograms(Pile pile, Materials materials) {
        return PileMixture.timesTheRecipe(pile, materials)
                * Stream.concat(pile.recipe().stream(), pile.log().stream().flatMap(e -> e.added().stream()))
                        .mapToDouble(i -> portion(i, materials).kgWet().likely())
                        .sum();
    }

    static Portion portion(Ingredient one, Materials materials) {
        return new Portion(materials.get(one.material()), one.amount(), one.pieceCm(), one.chopped());
    }

    private static PileModel made(
            Pile pile,
            Materials materials,
            Matter matter,
            Stage stage,
            Warmth warmth,
            Collection<Reads> readings,
            Collection<Sign> seen,
            boolean typical) {
        int age = age(pile);
        int ahead = ahead(pile);
        Climate climate = Climate.of(pile, age + ahead + 1);
        PileState start = placed(
                pile, materials, matter, stage, warmth.celsius(climate.weather().airC(0)), seen);
        RecordedEvents record = new RecordedEvents(pile, materials, start, climate.weather());
        List<CoreReading> cores = record.cores();
        return new PileModel(
                pile,
                start,
                new Climate(
                        climate.known(), climate.january(), climate.weather().withWind(Surroundings.wind(pile))),
                record.events(seen),
                cores,
                record.marks(readings, seen),
                age,
                ahead,
                warmth,
                typical,
                WarmOnce.of(pile, seen, cores));
    }

    /** Whether it was said to be frozen when it was put together. */
    private static boolean frozen(Pile pile, Collection<Sign> seen) {
        return seen.contains(Sign.SNOW_MIXED_IN) || seen.contains(Sign.FROZEN_THROUGH) && age(pile) <= JUST_BUILT;
    }

    /** A pile of the same stuff built in another weather. */
    PileState builtIn(Weather weather, PileState s) {
        double fresh = warmth.celsius(weather.airC(0));
        return new PileState(s.lengthM(), s.widthM(), s.matter(), fresh, fresh, s.envelope(), s.stage());
    }

    /** On the ground told, else on that of a bin of its kind; what is fed later lies on the same ground. */
    private static PileState placed(
            Pile pile, Materials materials, Matter matter, Stage stage, double celsius, Collection<Sign> seen) {
        var round = Surroundings.of(pile, seen.contains(Sign.SEALED_UNDER_PLASTIC));
        double all = PileMixture.settledM3(PileMixture.portions(pile, materials));
        Footprint ground = Footprint.of(pile.container(), Math.max(matter.volumeM3(), all));
        return new PileState(ground.lengthM(), ground.widthM(), matter, celsius, celsius, round, stage);
    }

    static int age(Pile pile) {
        return (int) Math.max(0, Math.min(100_000, ChronoUnit.DAYS.between(pile.built(), pile.asOf())));
    }

    /** How far ahead a pile is looked at does not depend on when somebody wants it: the wish is answered, see {@link WantedDate}. */
    private static int ahead(Pile pile) {
        return (int) Math.max(LEAST_AHEAD, Math.min(MOST_AHEAD, ChronoUnit.DAYS.between(pile.asOf(), spring(pile))));
    }

    private static LocalDate spring(Pile pile) {
        boolean south = pile.place().latitude().orElse(1) < 0;
        LocalDate day = LocalDate.of(pile.asOf().getYear(), south ? SPRING_MONTH_SOUTH : SPRING_MONTH, 1);
        return day.isBefore(pile.asOf().plusDays(LEAST_AHEAD)) ? day.plusYears(1) : day;
    }

    /** What its course up to the day of advice follows from. */
    public Setup setup() {
        return new Setup(start, climate.weather(), events, marks, age + 1);
    }

    /** The date of a day of the run. */
    public LocalDate date(int day) {
        return pile.built().plusDays(day);
    }
}
