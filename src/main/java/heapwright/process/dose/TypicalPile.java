package heapwright.process.dose;

import heapwright.process.mixture.Band;

/** The usual range of a home pile, for one of which neither recipe nor measurement is known: wide on purpose. */
final class TypicalPile {

    /** Kg per cubic metre: good 400 to 600, caution to 700 (judgement on PAUL09, LSU3838 and COOP02). */
    static final Band DENSITY_KG_M3 = new Band(400, 550, 700);

    /** Percent: the usual acceptable range (RYNK92, from memory; SASK08, published). */
    static final Band MOISTURE_PCT = new Band(40, 55, 65);

    /** C:N: the usual acceptable range (RYNK92, from memory; SASK08, published). */
    static final Band CARBON_TO_NITROGEN = new Band(20, 30, 40);

    /** Carbon, percent of dry mass (judgement within the 35 to 58 % of plants). */
    static final Band CARBON_PCT = new Band(38, 45, 50);

    /** Organic matter, share of dry mass (carbon 45 % times 1.8, rounded; judgement). */
    static final double ORGANIC_MATTER = 0.80;

    /** Woody materials, share of dry mass (judgement). */
    static final double WOODY_SHARE = 0.20;

    private TypicalPile() {}
}
