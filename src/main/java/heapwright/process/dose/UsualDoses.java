package heapwright.process.dose;

import heapwright.knowledge.Material;
import heapwright.knowledge.UsualDose;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Equations;
import java.util.List;

/** What a usual dose amounts to in one pile, against what the pile needs. */
public final class UsualDoses {

    private static final double ASH_LITRES_PER_M3 = 1;
    private static final double LIME_LITRES_PER_M3 = 1;
    private static final double SOIL_LITRES_PER_M3 = 10;
    private static final double MATCHBOXES = 2;
    private static final double TABLESPOONS = 2;
    private static final double CAN_LITRES = 10;
    private static final double YEAST_GRAMS = 10;

    /** Sodium in sodium bicarbonate, 23 of 84 (CHEMISTRY). */
    private static final double SODIUM_IN_SODA = 0.274;

    /** Carbon in table sugar, 144 of 342 (CHEMISTRY). */
    private static final double CARBON_IN_SUGAR = 0.421;

    /** Grams of sugar in a litre: 198 to 200 g a US cup (general references, published). */
    private static final double SUGAR_GRAMS_PER_LITRE = 840;

    /** Carbon and nitrogen in dried yeast, share of its mass (from memory). */
    private static final double CARBON_IN_YEAST = 0.45;

    private static final double NITROGEN_IN_YEAST = 0.08;

    /** Sodium in a litre of salted broth, grams: about 0.8 % salt (judgement). */
    private static final double SODIUM_IN_BROTH = 3.1;

    private UsualDoses() {}

    /**
     * The figures of one usual dose in one pile.
     *
     * @param matchboxLitres volume of a matchbox, litres
     * @param tablespoonLitres volume of a tablespoon, litres
     * @throws IllegalArgumentException when the materials lack the one that is needed
     */
    public static List<Term> of(UsualDose dose, DoseContext context, double matchboxLitres, double tablespoonLitres) {
        return switch (dose) {
            case ASH_BY_THE_LITRE -> strewn(context, "wood-ash", ASH_LITRES_PER_M3);
            case UREA_BY_THE_MATCHBOX -> urea(context, matchboxLitres);
            case BAKING_SODA -> soda(context, tablespoonLitres);
            case YEAST_AND_SUGAR -> yeast(context, tablespoonLitres);
            case BROTH -> broth(context);
            case LIME_ON_THE_LAYERS -> strewn(context, "lime-ground", LIME_LITRES_PER_M3);
            case SOIL_ON_THE_LAYERS -> strewn(context, "soil", SOIL_LITRES_PER_M3);
        };
    }

    private static List<Term> strewn(DoseContext context, String material, double litresPerM3) {
        PileStock stock = context.stock();
        Band kg = mass(
                context.materials().get(material),
                litresPerM3 * stock.volumeM3().likely());
        return List.of(
                new Term(Key.DOSE_MASS, kg.times(1000), Basis.ESTIMATED),
                new Term(Key.SHARE_OF_PILE_MASS, kg.times(100 / stock.wetKg().likely()), stock.volumeBasis()));
    }

    private static List<Term> urea(DoseContext context, double matchboxLitres) {
        Material urea = context.materials().get("urea");
        Band grams = mass(urea, MATCHBOXES * matchboxLitres).times(1000);
        Band nitrogen = grams.times(Composition.of(urea).nitrogen());
        NitrogenNeed need = NitrogenNeed.of(context);
        double needGrams = need.kg().likely() * 1000;
        Working working = Working.start()
                .and(Key.DOSE_MASS, grams, Basis.ESTIMATED)
                .and(Key.NITROGEN_GIVEN, nitrogen, Basis.ESTIMATED)
                .and(Key.SOLUTION_STRENGTH, grams.times(1 / CAN_LITRES), Basis.ESTIMATED)
                .and(Key.NITROGEN_NEED, need.kg().times(1000), need.basis());
        return needGrams > 0
                ? working.and(Key.SHARE_OF_NEED, nitrogen.times(100 / needGrams), need.basis())
                        .terms()
                : working.terms();
    }

    private static List<Term> soda(DoseContext context, double tablespoonLitres) {
        Band grams = mass(context.materials().get("baking-soda"), TABLESPOONS * tablespoonLitres)
                .times(1000);
        return List.of(
                new Term(Key.DOSE_MASS, grams, Basis.ESTIMATED),
                new Term(Key.SODIUM, grams.times(SODIUM_IN_SODA), Basis.ESTIMATED));
    }

    private static List<Term> yeast(DoseContext context, double tablespoonLitres) {
        double sugar = TABLESPOONS * tablespoonLitres * SUGAR_GRAMS_PER_LITRE;
        return Working.start()
                .and(Key.DOSE_MASS, sugar + YEAST_GRAMS, Basis.ESTIMATED)
                .and(Key.CARBON_GIVEN, sugar * CARBON_IN_SUGAR + YEAST_GRAMS * CARBON_IN_YEAST, Basis.ESTIMATED)
                .and(Key.NITROGEN_GIVEN, YEAST_GRAMS * NITROGEN_IN_YEAST, Basis.ESTIMATED)
                .and(Key.WATER_GIVEN, CAN_LITRES, Basis.REPORTED)
                .and(
                        Key.MOISTURE_RISE,
                        rise(context.stock(), CAN_LITRES),
                        context.stock().moistureBasis())
                .terms();
    }

    private static List<Term> broth(DoseContext context) {
        return Working.start()
                .and(Key.SODIUM, SODIUM_IN_BROTH, Basis.ESTIMATED)
                .and(Key.WATER_GIVEN, 1, Basis.REPORTED)
                .and(
                        Key.MOISTURE_RISE,
                        rise(context.stock(), 1),
                        context.stock().moistureBasis())
                .terms();
    }

    private static Band mass(Material material, double litres) {
        return Density.byHand(material).times(litres / Density.LITRES_PER_M3);
    }

    /** Points of moisture that some water adds to a pile. */
    private static double rise(PileStock stock, double litres) {
        double before = stock.moisturePct().likely();
        double water = stock.wetKg().likely() * before / 100;
        double dry = stock.wetKg().likely() - water;
        return Equations.moisturePct(dry + water + litres, dry) - before;
    }
}
