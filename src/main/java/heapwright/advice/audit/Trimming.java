package heapwright.advice.audit;

import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.process.dose.Limits;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.Portion;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Holds of a recipe to what their limits allow: soil and ash to a sprinkle and a dusting, salted stuff to what plants
 * bear, fertiliser to what the carbon of the season takes up, and water to what makes it damp.
 *
 * @param portions the recipe with no more than that
 * @param trimmed what was cut back, with the litres that are left
 */
public record Trimming(List<Portion> portions, List<Trimmed> trimmed) {

    /**
     * A material that was cut back.
     *
     * @param material which
     * @param litres how much of it may stay; 0 for nothing
     */
    public record Trimmed(Material material, double litres) {}

    private static final double PERCENT = 100;

    /** Whether none of a material is left. */
    boolean leavesOut(Material material) {
        return trimmed.stream().anyMatch(t -> t.material().equals(material) && t.litres() <= 0);
    }

    /** @param spoonLitres the least that can be measured out: of fertiliser less than this is left out, litres */
    static Trimming of(List<Portion> portions, Limits limits, double spoonLitres) {
        Trimming soil = cut(portions, Trait.SOIL, soilShare(portions, limits.of(Limit.SOIL_MAX_SHARE)));
        Trimming ash = cut(soil.portions, Trait.ALKALI, ashShare(soil.portions, limits.of(Limit.ASH_MAX)));
        Trimming salt = cut(
                ash.portions,
                p -> p.material().saltShare() > 0,
                saltShare(ash.portions, limits.share(Limit.SALT_LOAD_MAX)));
        double most = limits.share(Limit.MOISTURE_GOOD_HIGH);
        Trimming feed = cut(salt.portions, Trait.FAST_NITROGEN, feedShare(salt.portions, limits, spoonLitres));
        double dissolving = Feeding.waterLitres(feed.portions, limits);
        Trimming water = cut(feed.portions, Trimming::isWater, waterShare(feed.portions, most, dissolving));
        return new Trimming(
                water.portions,
                Stream.of(soil, ash, salt, feed, water)
                        .flatMap(one -> one.trimmed.stream())
                        .toList());
    }

    /** The part of the salted stuff that may stay, so that its salt is no more than a share of all dry matter. */
    private static double saltShare(List<Portion> portions, double most) {
        double salted = 0;
        double salt = 0;
        double other = 0;
        for (Portion p : portions) {
            double share = p.material().saltShare();
            if (share > 0) {
                salted += dryKg(p);
                salt += dryKg(p) * share;
            } else {
                other += dryKg(p);
            }
        }
        double above = salt - most * salted;
        return above > 0 && other > 0 ? most * other / above : 1;
    }

    /** The part of the water that may stay beside that of the fertiliser, so that the mix is no wetter than good. */
    private static double waterShare(List<Portion> portions, double most, double dissolving) {
        double poured = portions.stream()
                .filter(Trimming::isWater)
                .mapToDouble(p -> p.kgWet().likely())
                .sum();
        double may = Math.max(0, roomForWater(portions.stream(), most) - dissolving);
        return poured > may ? may / poured : 1;
    }

    /** What may be poured on before all but the water is wetter than good, kg; below zero where it is so already. */
    private static double roomForWater(Stream<Portion> portions, double most) {
        return portions.filter(p -> !isWater(p))
                        .mapToDouble(p -> dryKg(p) - (1 - most) * p.kgWet().likely())
                        .sum()
                / (1 - most);
    }

    private static boolean isWater(Portion portion) {
        return Density.fillsGaps(portion.material());
    }

    private static double dryKg(Portion portion) {
        return portion.kgWet().likely() * (1 - portion.material().moisturePct().typical() / PERCENT);
    }

    /** The part of the soil that may stay, so that it is no more than its share of the weight; all where it is all there is. */
    private static double soilShare(List<Portion> portions, double mostPct) {
        double soil = kg(portions, Trait.SOIL);
        double other = portions.stream().mapToDouble(p -> p.kgWet().likely()).sum() - soil - kg(portions, Trait.ALKALI);
        double most = other * mostPct / (PERCENT - mostPct);
        return soil > most && other > 0 ? most / soil : 1;
    }

    /** The part of the ash that may stay, so that it is no more than its litres to a cubic metre of the rest. */
    private static double ashShare(List<Portion> portions, double mostLitres) {
        double ash = litres(portions, Trait.ALKALI);
        double most = mostLitres * restM3(portions);
        return ash > most && most > 0 ? most / ash : 1;
    }

    /**
     * The part of the fertiliser that the carbon of this season can hold, in no more water than the rest takes up; none
     * where the rest is too rich or too wet without it, or where less than a spoonful would be left.
     */
    private static double feedShare(List<Portion> portions, Limits limits, double spoonLitres) {
        List<Portion> feeds =
                portions.stream().filter(p -> has(p, Trait.FAST_NITROGEN)).toList();
        double most = limits.share(Limit.MOISTURE_GOOD_HIGH);
        double room = roomForWater(portions.stream().filter(p -> !feeds.contains(p)), most);
        double wets = Feeding.waterLitres(feeds, limits) - roomForWater(feeds.stream(), most);
        double share = Math.min(
                fertiliserShare(portions, limits.of(Limit.CN_GOOD_LOW)), wets > room ? Math.max(0, room) / wets : 1);
        return share < 1 && share * litres(portions, Trait.FAST_NITROGEN) < spoonLitres ? 0 : share;
    }

    private static double fertiliserShare(List<Portion> portions, double leastRatio) {
        double fertiliser = 0;
        double carbon = 0;
        double nitrogen = 0;
        for (Portion p : portions) {
            Composition of = Composition.ofSeason(p.material());
            double kg = p.kgWet().likely();
            carbon += kg * of.carbon();
            if (has(p, Trait.FAST_NITROGEN)) {
                fertiliser += kg * of.nitrogen();
            } else {
                nitrogen += kg * of.nitrogen();
            }
        }
        double room = carbon / leastRatio - nitrogen;
        return fertiliser <= 0 || room >= fertiliser ? 1 : Math.max(0, room / fertiliser);
    }

    private static double restM3(List<Portion> portions) {
        return PileMixture.settledM3(
                portions.stream().filter(p -> !has(p, Trait.ALKALI)).toList());
    }

    private static Trimming cut(List<Portion> portions, Trait trait, double share) {
        return cut(portions, p -> has(p, trait), share);
    }

    private static Trimming cut(List<Portion> portions, Predicate<Portion> which, double share) {
        if (share >= 1) {
            return new Trimming(portions, List.of());
        }
        List<Portion> kept = new ArrayList<>();
        List<Trimmed> trimmed = new ArrayList<>();
        for (Portion p : portions) {
            if (which.test(p)) {
                Portion less = p.times(share);
                if (share > 0) {
                    kept.add(less);
                }
                trimmed.add(new Trimmed(p.material(), less.litres().likely()));
            } else {
                kept.add(p);
            }
        }
        return new Trimming(kept, trimmed);
    }

    private static boolean has(Portion portion, Trait trait) {
        return portion.material().traits().contains(trait);
    }

    private static double kg(List<Portion> portions, Trait trait) {
        return portions.stream()
                .filter(p -> has(p, trait))
                .mapToDouble(p -> p.kgWet().likely())
                .sum();
    }

    private static double litres(List<Portion> portions, Trait trait) {
        return portions.stream()
                .filter(p -> has(p, trait))
                .mapToDouble(p -> p.litres().likely())
                .sum();
    }
}
