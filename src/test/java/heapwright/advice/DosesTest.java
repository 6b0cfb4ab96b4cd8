package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.fact.Reads;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.UsualDose;
import heapwright.pile.Pile;
import heapwright.process.dose.DoseAmount;
import heapwright.process.dose.Term;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The amounts for a pile")
class DosesTest {

    private static final String LEAVES =
            "'built': '2026-10-10', 'recipe': [{'material': 'leaves-mixed', 'amount': 100, 'unit': 'kg'}]";

    private static Doses doses(String fields, boolean cold, Reads... readings) {
        Pile pile = TestPile.of(fields);
        return new Doses(
                pile,
                TestPile.KNOWLEDGE,
                Materials.of(TestPile.KNOWLEDGE.materials(), pile.materials()),
                new MixtureCalculator(),
                List.of(readings),
                cold);
    }

    private static double litres(Doses doses, Remedy remedy) {
        return doses.apply(remedy).stream()
                .mapToDouble(d -> d.litres().likely())
                .sum();
    }

    private static double term(List<Term> terms, Term.Key key) {
        return terms.stream()
                .filter(t -> t.key() == key)
                .mapToDouble(t -> t.value().likely())
                .findFirst()
                .orElseThrow();
    }

    private static Reads moisture(double likely, Reads.Basis basis) {
        return new Reads(Reading.MOISTURE, likely - 2, likely, likely + 2, basis);
    }

    @Test
    @DisplayName("go by the moisture that the hand tells, which counts more than the recipe's")
    void felt() {
        Reads felt = moisture(30, Reads.Basis.REPORTED);
        DoseAmount water = doses(LEAVES, false, felt).apply(Remedy.ADD_WATER).get(0);
        assertEquals(30, term(water.working(), Term.Key.PILE_MOISTURE), 0.5);
        DoseAmount reckoned = doses(LEAVES, false).apply(Remedy.ADD_WATER).get(0);
        assertTrue(Math.abs(term(reckoned.working(), Term.Key.PILE_MOISTURE) - 30) > 2, reckoned.toString());
        for (Reads other : List.of(
                moisture(30, Reads.Basis.ESTIMATED), new Reads(Reading.AGE, 29, 30, 31, Reads.Basis.REPORTED))) {
            assertEquals(
                    reckoned,
                    doses(LEAVES, false, other).apply(Remedy.ADD_WATER).get(0),
                    other.toString());
        }
    }

    @Test
    @DisplayName("are none where a remedy has no dose")
    void none() {
        assertEquals(List.of(), doses(LEAVES, false).apply(Remedy.TURN_FULLY));
    }

    @Test
    @DisplayName("keep within the person's own limits")
    void ownLimits() {
        double usual = litres(doses(LEAVES, false), Remedy.ADD_WATER);
        double own = litres(doses(LEAVES + ", 'limits': {'water-max-at-once': 10}", false), Remedy.ADD_WATER);
        assertTrue(own > 0 && own < usual / 2, own + " against " + usual);
    }

    @Test
    @DisplayName("are larger where the pile must stand the winter")
    void winter() {
        String small =
                "'built': '2026-10-10', 'container': {'kind': 'open-heap', 'volume': {'value': 0.9, 'unit': 'm3'}}";
        double summer = litres(doses(small, false), Remedy.COVER_WITH_COMPOST);
        double winter = litres(doses(small, true), Remedy.COVER_WITH_COMPOST);
        assertTrue(winter > summer, winter + " against " + summer);
    }

    private static HomeRemedy usual(Doses doses, UsualDose which, Cause... standing) {
        return doses.usual(Set.of(standing)).stream()
                .filter(h -> h.dose() == which)
                .findFirst()
                .orElseThrow();
    }

    @Test
    @DisplayName("of what people give are by the measures of the house, the person's own first")
    void measures() {
        double box = TestPile.KNOWLEDGE.measures().get("matchbox").litres();
        double spoon = TestPile.KNOWLEDGE.measures().get("tablespoon").litres();
        String own = ", 'measures': {'matchbox': {'value': %s, 'unit': 'L'}, 'tablespoon': {'value': %s, 'unit': 'L'}}";
        Doses usual = doses(LEAVES, false);
        assertTrue(term(usual(usual, UsualDose.BAKING_SODA).figures(), Term.Key.DOSE_MASS) > 10, "grams");
        Doses large = doses(LEAVES + own.formatted(2 * box, 3 * spoon), false);
        assertEquals(
                2 * term(usual(usual, UsualDose.UREA_BY_THE_MATCHBOX).figures(), Term.Key.DOSE_MASS),
                term(usual(large, UsualDose.UREA_BY_THE_MATCHBOX).figures(), Term.Key.DOSE_MASS),
                1e-6);
        assertEquals(
                3 * term(usual(usual, UsualDose.BAKING_SODA).figures(), Term.Key.DOSE_MASS),
                term(usual(large, UsualDose.BAKING_SODA).figures(), Term.Key.DOSE_MASS),
                1e-6);
    }

    @Test
    @DisplayName("of what people give are asked for where a cause stands that they give it for")
    void asked() {
        Doses doses = doses(LEAVES, false);
        assertTrue(usual(doses, UsualDose.UREA_BY_THE_MATCHBOX, Cause.LACKS_NITROGEN, Cause.TOO_WET)
                .asked());
        assertTrue(!usual(doses, UsualDose.UREA_BY_THE_MATCHBOX, Cause.TOO_WET).asked());
        assertTrue(!usual(doses, UsualDose.UREA_BY_THE_MATCHBOX).asked());
    }
}
