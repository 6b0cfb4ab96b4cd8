package heapwright.advice.winter;

import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.process.heat.Matter;
import heapwright.process.heat.Stage;
import heapwright.process.mixture.Contribution;
import heapwright.process.mixture.Degradability;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.PileSize;
import heapwright.process.mixture.Portion;
import java.util.List;
import java.util.Optional;

/** What a recipe is to the process model. The shares and sizes by kind of material are judgement. */
final class RecipeMatter {

    /** Only likely values are read, and they need no draws. */
    private static final MixtureCalculator CALCULATOR = new MixtureCalculator(2);
    /** The model lets a pile settle by a tenth; the mixture's settled volume is after that. */
    private static final double AS_HEAPED = 1.08;
    /** No mix is denser, kg/m³: soaked peelings without any gaps. */
    private static final double DENSEST = 950;

    /** Below this part of its room a bin was not filled (judgement). */
    private static final double SURELY_NOT_FULL = 0.7;

    private static final double MOST_LOOSE = 2;

    private static final double CARBON_OF_ORGANIC = 0.5;
    /** Piece size at which half the rate is left, and the size at which the factor is 1, cm (docs/method/heat.md). */
    private static final double HALF_CM = 5;

    private static final double NORMAL_CM = 2.5;
    private static final double START_ACID = 0.2;
    private static final double FRUIT_ACID = 0.6;
    private static final double KITCHEN_ACID = 0.25;

    private RecipeMatter() {}

    /** The matter of some portions, as heaped by themselves. */
    static Matter of(List<Portion> portions) {
        return of(portions, Optional.empty());
    }

    /**
     * The matter of some portions, as heaped.
     *
     * @param size the size of the heap it made, or the room it was put into, where that is known
     */
    static Matter of(List<Portion> portions, Optional<PileSize.Built> size) {
        Mixture mix = CALCULATOR.mix(portions);
        double dry = Math.max(1e-3, mix.masses().dry().likely());
        double water = Math.max(0, mix.masses().water().likely());
        double organic =
                Math.min(dry, Math.max(1e-6, mix.masses().volatileSolids().likely()));
        double carbon = 0;
        double easy = 0;
        double quick = 0;
        for (Contribution one : mix.contributions()) {
            double food = one.kgCarbon() * Degradability.of(one.material()).likely();
            carbon += one.kgCarbon();
            easy += food;
            quick += food * quickShare(one.material());
        }
        double degradable = carbon > 0 ? organic / dry * easy / carbon : 0;
        double quickly = carbon > 0 ? organic / dry * quick / carbon : 0;
        double untold = mix.settledM3().likely() * AS_HEAPED;
        double volume = Math.max(
                size.map(one -> seen(one, untold, PileMixture.looseM3(portions)))
                        .orElse(untold),
                (dry + water) / DENSEST);
        double nitrogen = Math.min(dry, nitrogen(mix, organic));
        return new Matter(
                dry,
                water,
                quickly,
                Math.max(0, degradable - quickly),
                Math.max(0, organic / dry - degradable),
                nitrogen,
                Math.min(nitrogen, fertiliser(mix)),
                volume,
                pieces(portions),
                acid(mix, dry));
    }

    /**
     * What was seen to lie there. A bin is taken to have been filled where the recipe as filled by hand comes to its
     * room or near it.
     */
    private static double seen(PileSize.Built size, double untold, double loose) {
        if (size.filled()) {
            return size.m3();
        }
        double full = Math.max(0, Math.min(1, (loose / size.m3() - SURELY_NOT_FULL) / (1 - SURELY_NOT_FULL)));
        double least = Math.min(size.m3(), untold);
        return least + full * (size.m3() - least);
    }

    /** How far matter that fills so much will still settle: to what the recipe settles to. */
    static Stage stage(List<Portion> portions, Matter matter) {
        double untold = CALCULATOR.mix(portions).settledM3().likely() * AS_HEAPED;
        double loose = matter.volumeM3() / untold * (1 + Stage.fresh().loose()) - 1;
        return Stage.fresh(Math.max(0, Math.min(MOST_LOOSE, loose)));
    }

    /** Nitrogen that makes the model's C:N that of the carbon which asks for nitrogen within a season. */
    private static double nitrogen(Mixture mix, double organic) {
        double asks = Math.max(1e-6, mix.masses().reachableCarbon().likely());
        return Math.max(1e-6, mix.masses().nitrogen().likely() * organic * CARBON_OF_ORGANIC / asks);
    }

    private static double fertiliser(Mixture mix) {
        return mix.contributions().stream()
                .filter(c -> c.material().traits().contains(Trait.FAST_NITROGEN))
                .mapToDouble(Contribution::kgNitrogen)
                .sum();
    }

    /** Of what can decay in a season, the part that does so quickly. */
    private static double quickShare(Material material) {
        if (Degradability.isWoody(material)) {
            return 0.05;
        }
        if (material.traits().contains(Trait.KITCHEN)
                || material.traits().contains(Trait.GRASS)
                || material.traits().contains(Trait.FRUIT)) {
            return 0.8;
        }
        if (material.traits().contains(Trait.LEAVES)) {
            return 0.3;
        }
        return switch (material.group()) {
            case MEAL -> 0.8;
            case NITROGEN_RICH -> 0.65;
            case MANURE -> 0.5;
            case CARBON_RICH, WOODY -> 0.15;
            case STARTER -> 0.1;
            case MINERAL, AMENDMENT, PROBLEM -> 0.4;
        };
    }

    /** The size of pieces that would decay at the rate of them all together. */
    private static double pieces(List<Portion> portions) {
        double food = 0;
        double rate = 0;
        for (Portion one : portions) {
            double kg = one.kgWet().likely()
                    * (1 - one.material().moisturePct().typical() / 100)
                    * (0.05 + Degradability.of(one.material()).likely());
            food += kg;
            rate += kg / (1 + pieceCm(one) / HALF_CM);
        }
        double mean = food > 0 ? rate / food : 1 / (1 + NORMAL_CM / HALF_CM);
        return Math.max(0.2, Math.min(60, HALF_CM * (1 / mean - 1)));
    }

    /** A stem is thin: it decays as a lump of half its length would. */
    private static double pieceCm(Portion one) {
        double length = one.pieceCm().orElse(usualCm(one.material(), one.chopped()));
        boolean thin = !Degradability.isWoody(one.material());
        return Math.max(0.2, thin ? length / 2 : length);
    }

    private static double usualCm(Material material, boolean chopped) {
        if (material.traits().contains(Trait.SAWDUST)) {
            return 0.3;
        }
        if (Degradability.isWoody(material)) {
            return chopped ? 3 : 6;
        }
        if (material.traits().contains(Trait.STALKS)) {
            return chopped ? 5 : 20;
        }
        return switch (material.group()) {
            case MEAL, MINERAL, AMENDMENT -> 0.3;
            case STARTER -> 1;
            default -> chopped ? 3 : 5;
        };
    }

    private static double acid(Mixture mix, double dry) {
        double index = START_ACID;
        for (Contribution one : mix.contributions()) {
            double share = one.kgDry() / dry;
            if (one.material().traits().contains(Trait.ALKALI)) {
                index -= 4 * share;
            } else if (one.material().traits().contains(Trait.FRUIT)) {
                index += FRUIT_ACID * share;
            } else if (one.material().traits().contains(Trait.KITCHEN)) {
                index += KITCHEN_ACID * share;
            }
        }
        return Math.max(0, Math.min(1, index));
    }
}
