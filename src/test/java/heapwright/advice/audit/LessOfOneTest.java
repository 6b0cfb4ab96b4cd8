package heapwright.advice.audit;

import static heapwright.advice.audit.Audits.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.process.dose.Limits;
import heapwright.process.dose.PileStock;
import heapwright.process.mend.Goals;
import heapwright.process.mend.Heap;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Portion;
import heapwright.report.FirstPageOfAudit;
import heapwright.report.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Amounts by hand: droppings of hens bring most of the nitrogen, leaves most of the carbon. */
@DisplayName("Less of one thing")
class LessOfOneTest {

    private static final String LEAVES =
            some("leaves-mixed", 48, "bucket") + "," + some("grass-clippings", 24, "bucket");

    private static Proposal proposal(String recipe, String more) {
        return Audits.of(recipe, more).proposal().orElseThrow();
    }

    @Test
    @DisplayName("is told before anything is fetched, and the plan takes no more")
    void droppings() {
        Proposal proposal = proposal(LEAVES + "," + some("manure-hen-home", 12, "bucket"), "");
        Trimming.Trimmed less = proposal.less().orElseThrow();
        assertEquals("manure-hen-home", less.material().id());
        assertTrue(less.litres() < 120 && less.litres() % 10 < 1e-6, less.toString());
        assertTrue(proposal.mend().chosen().meetsAll());
        assertTrue(proposal.mend().unlock().isEmpty(), "nothing is fetched");
        assertEquals(
                less.litres(),
                proposal.build().orElseThrow().plan().layers().stream()
                        .filter(l -> l.material().equals(less.material().id()))
                        .mapToDouble(l -> l.litres() * l.times())
                        .sum(),
                1e-6);
    }

    @Test
    @DisplayName("is not asked for where what is at hand does it")
    void atHand() {
        assertTrue(proposal(
                        LEAVES + "," + some("manure-hen-home", 12, "bucket"),
                        ",\"atHand\":[{\"material\":\"straw\"},{\"material\":\"cardboard\"}]")
                .less()
                .isEmpty());
    }

    @Test
    @DisplayName("is not asked for where more than a quarter of the whole would have to go")
    void tooMuch() {
        assertTrue(proposal(some("grass-clippings", 40, "bucket") + "," + some("leaves-mixed", 4, "bucket"), "")
                .less()
                .isEmpty());
    }

    /** A heap of manure a little on the wet side works slowly; a smaller one would only be colder. */
    @Test
    @DisplayName("is not asked for where the heap works as it is")
    void works() {
        assertTrue(proposal(some("manure-horse-straw", 300, "kg") + "," + some("leaves-mixed", 60, "kg"), "")
                .less()
                .isEmpty());
    }

    @Test
    @DisplayName("never calls coarse stuff in order where it is short, and says how much would do")
    void coarse() {
        Audit audit = Audits.of(
                some("sawdust", 5, "bucket") + "," + some("coffee-grounds", 10, "bucket") + ","
                        + some("leaves-mixed", 3, "bucket"),
                "");
        double litres = audit.proposal().orElseThrow().mend().coarseLitres();
        assertTrue(litres > 5 && litres < 30, "a tenth of some 150 L: " + litres);
        String page = new FirstPageOfAudit(Audits.words(Units.METRIC), false)
                .write(audit)
                .replaceAll("\\s+", " ");
        assertFalse(page.contains("coarse material are in order"), page);
        assertTrue(page.contains("To keep it open, mix in about"), page);
    }

    private static final double BUCKET = 10;
    private static final double ANY = Double.POSITIVE_INFINITY;
    private static final Limits LIMITS = new Limits(TestPile.KNOWLEDGE.limits().entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, one -> one.getValue().value())));

    private static Portion buckets(String id, double number) {
        return Portion.ofLitres(material(id), number * BUCKET);
    }

    private static Material material(String id) {
        return TestPile.KNOWLEDGE.materials().get(id);
    }

    private static Optional<LessOfOne> less(Goals goals, List<Portion> recipe) {
        return LessOfOne.of(recipe, new MixtureCalculator().mix(recipe), 0, goals, BUCKET);
    }

    private static Heap heap(List<Portion> recipe) {
        return Heap.of(PileStock.of(new MixtureCalculator().mix(recipe)));
    }

    /** Forty buckets of leaves and more and more grass, which makes it too rich: at last more than a quarter is too much. */
    @Test
    @DisplayName("takes away the fewest buckets that do, up to a quarter of the whole and not beyond")
    void quarter() {
        Goals notTooRich = new Goals(0, 100, 30, ANY, ANY);
        int some = 0;
        int beyond = 0;
        for (int grass = 10; grass <= 90; grass++) {
            int told = grass;
            int wanted = IntStream.rangeClosed(0, grass)
                    .filter(out -> notTooRich.met(
                            heap(List.of(buckets("leaves-mixed", 40), buckets("grass-clippings", told - out)))))
                    .findFirst()
                    .orElseThrow();
            Optional<LessOfOne> less =
                    less(notTooRich, List.of(buckets("leaves-mixed", 40), buckets("grass-clippings", grass)));
            if (wanted > 0 && wanted * 4 <= 40 + grass) {
                some++;
                assertEquals(
                        material("grass-clippings"), less.orElseThrow().taken().material());
                assertEquals(
                        (grass - wanted) * BUCKET, less.orElseThrow().taken().litres(), 1e-9);
            } else if (wanted > 0) {
                beyond++;
                assertTrue(less.isEmpty(), grass + " buckets, of which " + wanted + " are too many: " + less);
            }
        }
        assertTrue(some > 5 && beyond > 5, some + " and " + beyond);
    }

    @Test
    @DisplayName("leaves out the whole of a thing where no less does")
    void whole() {
        List<Portion> leaves = List.of(buckets("leaves-mixed", 40));
        Goals asLeanAsLeaves = new Goals(0, 100, heap(leaves).carbonToNitrogen() - 0.1, ANY, ANY);
        LessOfOne less = less(asLeanAsLeaves, List.of(buckets("leaves-mixed", 40), buckets("manure-hen-home", 1)))
                .orElseThrow();
        assertEquals(leaves, less.portions());
        assertEquals(new Trimming.Trimmed(material("manure-hen-home"), 0), less.taken());
    }

    /** Both are held to what the rest can take before this is asked. */
    @Test
    @DisplayName("is never less water, nor less fertiliser")
    void notWater() {
        Goals damp = new Goals(0, LIMITS.of(Limit.MOISTURE_GOOD_HIGH), 0, ANY, ANY);
        assertFalse(damp.met(heap(List.of(buckets("leaves-mixed", 40), buckets("water", 4)))));
        assertTrue(damp.met(heap(List.of(buckets("leaves-mixed", 40), buckets("water", 1)))));
        assertTrue(less(damp, List.of(buckets("leaves-mixed", 40), buckets("water", 4)))
                .isEmpty());
        Goals notTooRich = new Goals(0, 100, 30, ANY, ANY);
        assertFalse(notTooRich.met(heap(List.of(buckets("leaves-mixed", 40), buckets("urea", 1)))));
        assertTrue(notTooRich.met(heap(List.of(buckets("leaves-mixed", 40)))));
        assertTrue(less(notTooRich, List.of(buckets("leaves-mixed", 40), buckets("urea", 1)))
                .isEmpty());
    }
}
