package heapwright.process.use;

import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.process.mend.Yield;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.PileSize;
import heapwright.process.mixture.Portion;
import java.util.List;
import java.util.Optional;

/**
 * How much compost a pile gives. A height measured since it was built beats the size when built, that beats the recipe,
 * and where nothing was told the usual size of such a pile stands in.
 *
 * @param litres how much, litres
 * @param from where that is from
 */
public record Left(Band litres, From from) {

    private static final double LITRES_PER_M3 = 1000;

    /** A tape along a heap is right to about a tenth each way (judgement). */
    private static final double TAPE = 0.1;

    /** Where the amount is from; the earlier beats the later. */
    public enum From {
        /** The height was measured since it was built. */
        MEASURED,
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
        if (told.isPresent() && told.get().measured()) {
            double litres = told.get().volumeM3() * LITRES_PER_M3;
            return new Left(new Band(litres * (1 - TAPE), litres, litres * (1 + TAPE)), From.MEASURED);
        }
        boolean grew = !PileMixture.inOneGo(pile);
        if (mixture.isPresent() && (grew || told.isEmpty() || !filled(pile))) {
            return new Left(litres(kind, mixture.get().looseM3().times(times(pile, materials))), From.RECIPE);
        }
        return told.map(size -> new Left(litres(kind, Band.exact(size.volumeM3())), From.SIZE))
                .orElseGet(() ->
                        new Left(litres(kind, PileSize.usualM3(pile.container().kind())), From.ASSUMED));
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
