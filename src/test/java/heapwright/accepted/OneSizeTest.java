package heapwright.accepted;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.Option;
import heapwright.advice.TestPile;
import heapwright.advice.fact.Reads;
import heapwright.knowledge.Reading;
import heapwright.process.dose.DoseAmount;
import heapwright.process.dose.Term;
import heapwright.process.dose.Term.Key;
import heapwright.report.Catalogue;
import heapwright.report.TextReport;
import heapwright.report.Units;
import heapwright.report.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("One size, one weight, one set of figures")
class OneSizeTest {

    private static final String CUBIC_METRE = "'container': {'volume': {'value': 1, 'unit': 'm3'}}";

    private static final String DRY = "'built': '2026-05-01', 'asOf': '2026-06-10', %s, 'log': [%s"
            + "{'date': '2026-06-10', 'seen': ['squeeze-crumbles', 'core-cold', 'only-browns']}]";

    private static String added(String material, double amount, String unit) {
        return "{'date': '2026-06-05', 'added': [{'material': '" + material + "', 'amount': " + amount + ", 'unit': '"
                + unit + "'}]}, ";
    }

    private static Advice advice(String container, String log) {
        return TestPile.ADVISOR.diagnose(TestPile.of(String.format(DRY, container, log)));
    }

    private static Optional<Reads> reading(Advice advice, Reading reading) {
        return advice.readings().stream().filter(r -> r.reading() == reading).findFirst();
    }

    private static List<Term> terms(Advice advice, Key key) {
        return advice.steps().stream()
                .flatMap(step -> Stream.concat(Stream.of(step.main()), step.alternatives().stream()))
                .map(Option::doses)
                .flatMap(List::stream)
                .map(DoseAmount::working)
                .flatMap(List::stream)
                .filter(term -> term.key() == key)
                .toList();
    }

    @ParameterizedTest
    @DisplayName("what was added to an unknown pile is no mixture of which anything could be worked out")
    @EnumSource(names = {"CARBON_TO_NITROGEN", "ALL_CARBON_TO_NITROGEN", "FREE_AIR_SPACE", "WET_DENSITY"})
    void noMixtureOfAdditions(Reading reading) {
        Advice advice = advice(CUBIC_METRE, added("kitchen-scraps", 2, "bucket"));
        assertTrue(reading(advice, reading).isEmpty());
    }

    @Test
    @DisplayName("two buckets on a cubic metre leave it a cubic metre: it weighs what one weighs")
    void twoBuckets() {
        List<Term> mass = terms(advice(CUBIC_METRE, added("kitchen-scraps", 2, "bucket")), Key.PILE_MASS);
        assertFalse(mass.isEmpty());
        mass.forEach(term -> assertEquals(550, term.value().likely(), 1e-9));
    }

    /** A litre of ash weighs about 0.4 to 0.5 kg: of 550 kg that is a tenth of a percent. */
    @Test
    @DisplayName("a litre of ash is a tenth of a percent of a cubic metre, of no size told that is said to be assumed")
    void ashOverThePile() {
        Reads told = reading(advice(CUBIC_METRE, added("wood-ash", 1, "L")), Reading.ASH_LOAD)
                .orElseThrow();
        assertEquals(0.09, told.likely(), 0.03);
        assertEquals(Reads.Basis.ESTIMATED, told.basis());
        Reads assumed = reading(advice("'name': 'x'", added("wood-ash", 1, "L")), Reading.ASH_LOAD)
                .orElseThrow();
        assertEquals(Reads.Basis.ASSUMED, assumed.basis());
    }

    @ParameterizedTest(name = "{0} buckets in a cubic metre told")
    @DisplayName("a size told is the size of readings and doses alike, whatever the recipe settles to")
    @ValueSource(ints = {1, 10, 60, 120, 900})
    void toldSize(int buckets) {
        Advice advice = advice(
                CUBIC_METRE + ", 'recipe': [{'material': 'leaves-mixed', 'amount': " + buckets + ", 'unit': 'bucket'}]",
                "");
        assertEquals(1, reading(advice, Reading.VOLUME).orElseThrow().likely(), 1e-9);
        terms(advice, Key.PILE_VOLUME)
                .forEach(term -> assertEquals(1, term.value().likely(), 1e-9));
    }

    @Test
    @DisplayName("danger goes by the larger of two sizes that cannot both be right")
    void largerForDanger() {
        Advice small = advice(
                "'container': {'volume': {'value': 1, 'unit': 'L'}},"
                        + " 'recipe': [{'material': 'leaves-mixed', 'amount': 160, 'unit': 'kg'}]",
                "");
        Reads other = reading(small, Reading.DOUBTED_VOLUME).orElseThrow();
        assertTrue(other.likely() > 0.5 && other.likely() < 2.5, other.toString());
    }

    @Test
    @DisplayName("a figure that was assumed says so, and is missing nowhere")
    void assumedSaysSo() {
        Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
        String text =
                new TextReport(words, false).write(advice("'name': 'x'", "")).replaceAll("\\s+", " ");
        assertTrue(text.contains("(assumed)"), text);
        assertFalse(text.matches(".*C:N \\d+ \\(assumed\\)[^.]*missing.*"), text);
    }

    @Test
    @DisplayName("a lean pile that never heated has one C:N everywhere and decays nothing")
    void oneRatio() {
        String lean = "'built': '2026-03-01', 'asOf': '2026-06-10', 'recipe': [{'material': 'leaves-mixed',"
                + " 'amount': 20, 'unit': 'bucket'}, {'material': 'wood-ash', 'amount': 2, 'unit': 'bucket'}],"
                + " 'log': [{'date': '2026-06-10', 'seen': ['only-browns', 'never-heated', 'smells-ammonia']}]";
        Advice advice = TestPile.ADVISOR.diagnose(TestPile.of(lean));
        double read = reading(advice, Reading.CARBON_TO_NITROGEN).orElseThrow().likely();
        List<Term> dosed = terms(advice, Key.PILE_CARBON_TO_NITROGEN);
        assertFalse(dosed.isEmpty());
        dosed.forEach(term -> assertEquals(read, term.value().likely(), 1e-9));
        double audited = TestPile.ADVISOR
                .audit(TestPile.of(lean), java.util.OptionalDouble.empty())
                .orElseThrow()
                .mixture()
                .carbonToNitrogen()
                .likely();
        assertEquals(read, audited, 1e-9);
    }

    @Test
    @DisplayName("wood counts as far as a season reaches it, the same in cause, audit, dose and mend")
    void woodAlike() {
        String chips = "'built': '2026-06-01', 'asOf': '2026-06-20', 'recipe': [{'material': 'leaves-mixed', 'amount':"
                + " 60, 'unit': 'bucket'}, {'material': 'chips-hardwood', 'amount': 30, 'unit': 'bucket'}], 'log':"
                + " [{'date': '2026-06-20', 'seen': ['only-browns', 'never-heated', 'squeeze-drops']}]";
        Advice advice = TestPile.ADVISOR.diagnose(TestPile.of(chips));
        double read = reading(advice, Reading.CARBON_TO_NITROGEN).orElseThrow().likely();
        double all =
                reading(advice, Reading.ALL_CARBON_TO_NITROGEN).orElseThrow().likely();
        assertTrue(read < all);
        List<Term> dosed = terms(advice, Key.PILE_CARBON_TO_NITROGEN);
        assertFalse(dosed.isEmpty());
        dosed.forEach(term -> assertEquals(read, term.value().likely(), 1e-9));
        var audit = TestPile.ADVISOR
                .audit(TestPile.of(chips), java.util.OptionalDouble.empty())
                .orElseThrow();
        assertEquals(read, audit.mixture().carbonToNitrogen().likely(), 1e-9);
        var mend = audit.proposal().orElseThrow().mend().chosen();
        assertTrue(mend.additions().stream().allMatch(a -> a.material().equals("water")), "nothing is at hand");
        assertEquals(read, mend.after().carbonToNitrogen(), 1e-9);
    }
}
