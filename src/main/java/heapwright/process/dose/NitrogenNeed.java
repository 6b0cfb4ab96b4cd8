package heapwright.process.dose;

import heapwright.knowledge.Limit;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import java.util.List;

/**
 * The nitrogen a pile lacks for the aim in C:N, counting wood only by the part that can decay within a season.
 *
 * @param kg nitrogen lacking, kg; zero where there is enough
 * @param ratio C:N that was reckoned with
 * @param aim C:N aimed at
 * @param basis whether the C:N comes from a recipe or had to be assumed
 */
record NitrogenNeed(Band kg, Band ratio, double aim, Basis basis) {

    /**
     * Without a recipe the pile is taken as slow for want of nitrogen, since that is why a dose is asked for, and the
     * aim is only the near end of the good range: what is not known is dosed small.
     */
    static NitrogenNeed of(DoseContext context) {
        PileStock stock = context.stock();
        Limits limits = context.limits();
        boolean known = stock.recipeBasis() != Basis.ASSUMED;
        double aim = known ? limits.aimCarbonToNitrogen() : limits.of(Limit.CN_GOOD_HIGH);
        Band ratio = known
                ? stock.carbonToNitrogen()
                : Band.around(limits.of(Limit.CN_GOOD_HIGH), limits.of(Limit.CN_SLOW), limits.of(Limit.CN_STARVED));
        Band kg = Band.around(
                need(stock.carbonKg().low(), ratio.low(), aim),
                need(stock.carbonKg().likely(), ratio.likely(), aim),
                need(stock.carbonKg().high(), ratio.high(), aim));
        return new NitrogenNeed(kg, ratio, aim, stock.recipeBasis());
    }

    private static double need(double carbonKg, double ratio, double aim) {
        return ratio > 0 ? Math.max(0, carbonKg * (1 / aim - 1 / ratio)) : 0;
    }

    List<Term> terms() {
        return List.of(
                new Term(Key.PILE_CARBON_TO_NITROGEN, ratio, basis),
                Term.of(Key.TARGET_CARBON_TO_NITROGEN, aim, Basis.REPORTED),
                new Term(Key.NITROGEN_NEED, kg.times(1000), basis));
    }
}
