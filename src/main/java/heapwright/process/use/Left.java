package heapwright.process.use;

import heapwright.knowledge.Knowledge;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import heapwright.process.mend.Yield;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.PileSize;
import heapwright.process.mixture.Portion;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How much compost a pile gives. A height measured since it was built beats the size when built, that beats the recipe,
 * and where nothing was told the usual size of such a pile stands in. What was measured before something more went in no
 * longer counts; what was measured some weeks ago is at most what is there still.
 *
 * @param litres how much, litres
 * @param from where that is from
 */
public record Left(Band litres, From from) {

    private static final double LITRES_PER_M3 = 1000;

    /** A tape along a heap is right to about a tenth each way (judgement). */
    private static final double TAPE = 0.1;

    /** A pile measured longer ago than this has sunk since, days (judgement). */
    private static final int STILL_SO_DAYS = 42;

    /** Where the amount is from; the earlier beats the later. */
    public enum From {
        /** The height was measured since it was built. */
        MEASURED,
        /** The height was measured since it was built, some weeks ago. */
        MEASURED_BEFORE,
        /** The size when built, and what such stuff leaves. */
        SIZE,
        /** The recipe, and what such stuff leaves. */
        RECIPE,
        /** Nothing was told. */
        ASSUMED
    }

    /** What a pile gives. */
    public static Left of(Pile pile, Knowledge knowledge) {
        Materials materials = Materials.of(knowledge.materials(), pile.materials());
        Optional<Mixture> mixture = PileMixture.of(pile, materials, new MixtureCalculator());
        Yield.Kind kind = mixture.map(Yield.Kind::of).orElse(Yield.Kind.MIXED);
        Optional<PileSize> told = PileSize.told(pile).filter(s -> s.volumeM3() > 0);
        Optional<LocalDate> measured = told.filter(PileSize::measured).flatMap(size -> measuredOn(pile));
        if (measured.isPresent() && !addedSince(pile, measured.get())) {
            return measured(pile, measured.get(), told.get().volumeM3() * LITRES_PER_M3, kind);
        }
        boolean grew = !PileMixture.inOneGo(pile);
        if (mixture.isPresent() && (grew || told.isEmpty() || !filled(pile))) {
            return new Left(litres(kind, mixture.get().looseM3().times(times(pile, materials))), From.RECIPE);
        }
        return PileSize.built(pile.container())
                .map(size -> new Left(litres(kind, Band.exact(size.m3())), From.SIZE))
                .orElseGet(() ->
                        new Left(litres(kind, PileSize.usualM3(pile.container().kind())), From.ASSUMED));
    }

    private static Left measured(Pile pile, LocalDate on, double litres, Yield.Kind kind) {
        double most = litres * (1 + TAPE);
        if (on.until(pile.asOf(), ChronoUnit.DAYS) <= STILL_SO_DAYS) {
            return new Left(new Band(litres * (1 - TAPE), litres, most), From.MEASURED);
        }
        double least = kind.left(Band.exact(litres)).low();
        return new Left(new Band(least, (least + litres) / 2, most), From.MEASURED_BEFORE);
    }

    /** The day of the latest measured height. */
    private static Optional<LocalDate> measuredOn(Pile pile) {
        return pile.log().stream()
                .filter(entry -> entry.measured().heightM().isPresent())
                .map(Entry::date)
                .filter(day -> !day.isAfter(pile.asOf()))
                .max(Comparator.naturalOrder());
    }

    private static boolean addedSince(Pile pile, LocalDate day) {
        return pile.log().stream()
                .anyMatch(entry -> entry.date().isAfter(day) && !entry.added().isEmpty());
    }

    /** Whether the size told when it was built is that of the stuff, and not the room of what holds it. */
    private static boolean filled(Pile pile) {
        return PileSize.built(pile.container()).map(PileSize.Built::filled).orElse(false);
    }

    private static double times(Pile pile, Materials materials) {
        List<Portion> portions = PileMixture.portions(pile, materials);
        return portions.isEmpty() ? 1 : PileMixture.timesTheRecipe(pile, materials);
    }

    private static Band litres(Yield.Kind kind, Band freshM3) {
        return kind.left(freshM3).times(LITRES_PER_M3);
    }
}
