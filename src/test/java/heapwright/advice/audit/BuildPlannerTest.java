package heapwright.advice.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.audit.BuildPlan.Cut;
import heapwright.advice.audit.BuildPlan.Feed;
import heapwright.advice.audit.BuildPlan.Fit;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Material;
import heapwright.pile.Amount;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.process.dose.Limits;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Heap;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Portion;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Recipes are invented. Built on 18 October 2026. */
@DisplayName("The plan to build a pile")
class BuildPlannerTest {

    private static final Knowledge KNOWLEDGE = KnowledgeReader.packed();
    private static final Limits LIMITS = new Limits(KNOWLEDGE.limits().entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, one -> one.getValue().value())));
    private static final LocalDate BUILT = LocalDate.of(2026, 10, 18);
    private static final Portion LEAVES = litres("leaves-mixed", 1000);

    private static Material material(String id) {
        return KNOWLEDGE.materials().get(id);
    }

    private static Portion litres(String id, double litres) {
        return Portion.ofLitres(material(id), litres);
    }

    private static Portion pieces(String id, double cm, boolean chopped) {
        return new Portion(material(id), Amount.ofVolume(400, "L", 400), OptionalDouble.of(cm), chopped);
    }

    private static Mixture mixture(List<Portion> portions) {
        return new MixtureCalculator().mix(portions);
    }

    private static BuildPlan plan(String container, List<Portion> portions, List<Addition> additions, boolean cold) {
        String text = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-10-18\",\"built\":\"2026-10-18\"" + container + "}";
        Pile pile = new PileReader(KNOWLEDGE.vocabulary())
                .read("test", text.getBytes(StandardCharsets.UTF_8))
                .pile()
                .orElseThrow();
        Plan mend = new Plan(additions, new Heap(1, 0.5, 0.2, 0.01, 0.01), 0, Set.of());
        return new BuildPlanner(KNOWLEDGE, LIMITS, Materials.of(KNOWLEDGE.materials(), List.of()))
                .plan(pile, portions, mixture(portions), mend, cold);
    }

    private static BuildPlan plan(Portion... portions) {
        return plan("", List.of(portions), List.of(), false);
    }

    private static double laid(BuildPlan plan, String id) {
        return plan.layers().stream()
                .filter(l -> l.material().equals(id))
                .mapToDouble(l -> l.litres() * l.times())
                .sum();
    }

    private static String bin(double height) {
        return ",\"container\":{\"length\":{\"value\":1,\"unit\":\"m\"},\"width\":{\"value\":0.8,\"unit\":\"m\"}"
                + (height > 0 ? ",\"height\":{\"value\":" + height + ",\"unit\":\"m\"}" : "") + "}";
    }

    /** What is filled by hand is loose; built up it is halfway to what it settles to. */
    @Test
    @DisplayName(
            "stands on its footprint as high as halfway between loose and settled stuff lies, and sinks to settled")
    void size() {
        BuildPlan plan = plan(bin(0), List.of(LEAVES), List.of(), false);
        Mixture leaves = mixture(List.of(LEAVES));
        double loose = leaves.looseM3().likely();
        double settled = leaves.settledM3().likely();
        assertEquals(1, loose, 1e-9);
        assertTrue(settled < 0.9 * loose);
        assertEquals(1, plan.lengthM(), 1e-9);
        assertEquals(0.8, plan.widthM(), 1e-9);
        assertEquals((loose + settled) / 2 / 0.8, plan.heightM(), 1e-9);
        assertEquals(settled / 0.8, plan.settledM(), 1e-9);
    }

    @Test
    @DisplayName("without a footprint is a cube, or as broad as it must be to end at a metre and a half")
    void free() {
        BuildPlan small = plan(LEAVES);
        assertEquals(small.heightM(), small.lengthM(), 1e-9);
        assertEquals(small.heightM(), small.widthM(), 1e-9);
        Portion much = litres("leaves-mixed", 8000);
        BuildPlan large = plan(much);
        double volume = Built.volumeM3(mixture(List.of(much))).likely();
        assertEquals(1.5, large.heightM(), 1e-9);
        assertEquals(large.lengthM(), large.widthM(), 1e-9);
        assertEquals(volume, large.lengthM() * large.widthM() * 1.5, 1e-9);
        BuildPlan high = plan(bin(0), List.of(much), List.of(), false);
        assertEquals(volume / 0.8, high.heightM(), 1e-9, "where the ground is told it goes up");
    }

    /** Judgement: part below 70 % of its height, over above 115 %. */
    @Test
    @DisplayName("tells how it fills a container of known height")
    void fit() {
        double high = plan(bin(0), List.of(LEAVES), List.of(), false).heightM();
        assertEquals(Fit.FILLS, plan(bin(0), List.of(LEAVES), List.of(), false).fit());
        assertEquals(
                Fit.FILLS,
                plan(bin(high / 0.71), List.of(LEAVES), List.of(), false).fit());
        assertEquals(
                Fit.PART,
                plan(bin(high / 0.69), List.of(LEAVES), List.of(), false).fit());
        assertEquals(
                Fit.FILLS,
                plan(bin(high / 1.14), List.of(LEAVES), List.of(), false).fit());
        assertEquals(
                Fit.OVER,
                plan(bin(high / 1.16), List.of(LEAVES), List.of(), false).fit());
    }

    @Test
    @DisplayName("lays in what is added with what was there, and gives fertiliser in doses and water by the round")
    void additions() {
        List<Portion> portions =
                List.of(LEAVES, litres("grass-clippings", 200), Portion.ofKilograms(material("urea"), 0.1));
        List<Addition> additions = List.of(
                new Addition("water", 30, 30, 1),
                new Addition("water", 12, 12, 1),
                new Addition("grass-clippings", 20, 100, 1),
                new Addition("urea", 0.05, 0.07, 1));
        BuildPlan plan = plan("", portions, additions, false);
        assertEquals(300, laid(plan, "grass-clippings"), 1e-9);
        assertEquals(1000, laid(plan, "leaves-mixed"), 1e-9);
        assertEquals(0, laid(plan, "urea"), 1e-9);
        assertEquals(0.15, plan.feeds().stream().mapToDouble(Feed::kg).sum(), 1e-9);
        assertEquals(BUILT, plan.feeds().get(0).days().get(0));
        assertTrue(plan.rounds() > 1);
        assertEquals(42, plan.waterPerRound() * plan.rounds(), 1e-9);
        assertEquals(0, plan(LEAVES).waterPerRound(), 1e-9);
        assertEquals(List.of(), plan(LEAVES).feeds());
    }

    /** Straw comes with 10 % water, leaves with 38 %, dried grass with 18 % but is a green. */
    @Test
    @DisplayName("soaks dry browns first where it gives water, and only these")
    void soak() {
        List<Portion> portions = List.of(LEAVES, litres("straw-wheat", 300), litres("grass-dried", 100));
        BuildPlan wet = plan("", portions, List.of(new Addition("water", 30, 30, 1)), false);
        assertEquals(List.of("straw-wheat"), wet.soak());
        assertEquals(
                List.of(), plan("", portions, List.of(), false).soak(), "without water there is nothing to soak in");
    }

    /** Wood wants pieces up to 5 cm (the limit of good pieces), soft stalks a hand to a forearm (FAO15, from memory). */
    @Test
    @DisplayName("has long pieces cut: wood with a shredder, stalks with a spade, and nothing that is short enough")
    void cuts() {
        Portion base = litres("chips-hardwood", 600);
        assertEquals(
                List.of(new Cut("straw-wheat", false, 10, 20)),
                plan(LEAVES, base, pieces("straw-wheat", 21, false)).cuts());
        assertEquals(
                List.of(), plan(LEAVES, base, pieces("straw-wheat", 19, false)).cuts());
        assertEquals(
                List.of(), plan(LEAVES, base, pieces("straw-wheat", 40, true)).cuts(), "it is chopped");
        assertEquals(
                List.of(new Cut("shavings-softwood", true, 2, 5)),
                plan(LEAVES, base, pieces("shavings-softwood", 6, false)).cuts());
        assertEquals(
                List.of(),
                plan(LEAVES, base, pieces("shavings-softwood", 4, false)).cuts());
        assertEquals(
                List.of(new Cut("straw-wheat", false, 10, 20)),
                plan(
                                LEAVES,
                                base,
                                pieces("straw-wheat", 40, true),
                                pieces("straw-wheat", 30, false),
                                pieces("straw-wheat", 12, false))
                        .cuts(),
                "one of the lots is long");
    }

    @Test
    @DisplayName("has twigs cut that nobody measured, unless they were chopped or all of them lie in the base")
    void uncut() {
        Portion twigs = litres("twigs", 900);
        BuildPlan plan = plan(LEAVES, twigs);
        assertEquals(List.of(new Cut("twigs", true, 2, 5)), plan.cuts());
        assertTrue(plan.cautions().containsAll(Set.of(Caution.SHREDDER, Caution.AXE_AND_SAW)));
        BuildPlan little = plan(LEAVES, litres("twigs", 100));
        assertEquals(List.of(), little.cuts());
        assertFalse(little.cautions().contains(Caution.SHREDDER), "nothing is shredded");
        assertFalse(little.cautions().contains(Caution.AXE_AND_SAW));
        Portion chopped = new Portion(material("twigs"), Amount.ofVolume(900, "L", 900), OptionalDouble.empty(), true);
        assertEquals(List.of(), plan(LEAVES, chopped).cuts());
        double kg = 0.9 * Density.byHand(material("twigs")).likely();
        BuildPlan added = plan("", List.of(LEAVES, chopped), List.of(new Addition("twigs", kg, 900, 1)), false);
        assertEquals(List.of(new Cut("twigs", true, 2, 5)), added.cuts(), "what is fetched comes as it is");
        assertFalse(
                plan(LEAVES, pieces("straw-wheat", 40, false)).cautions().contains(Caution.SHREDDER),
                "stalks are cut with a spade");
    }

    @Test
    @DisplayName("warns of what any building asks and of each thing that goes in, the gravest first")
    void cautions() {
        List<Portion> portions =
                List.of(LEAVES, litres("manure-hen-home", 100), Portion.ofKilograms(material("urea"), 0.1));
        List<Caution> told = plan("", portions, List.of(), false).cautions();
        Set<Caution> wanted = Set.of(
                Caution.DUST_AND_SPORES,
                Caution.PEOPLE_AT_RISK,
                Caution.GLOVES_AND_WASH,
                Caution.LIFTING,
                Caution.MANURE_HYGIENE,
                Caution.UREA_HANDLING);
        assertTrue(told.containsAll(wanted), told.toString());
        List<Integer> severities = new ArrayList<>();
        told.forEach(c -> severities.add(KNOWLEDGE.cautions().get(c).severity().ordinal()));
        assertEquals(severities.stream().sorted().toList(), severities);
        assertTrue(severities.get(0) < severities.get(severities.size() - 1));
        assertEquals(
                Set.of(Caution.DUST_AND_SPORES, Caution.PEOPLE_AT_RISK, Caution.GLOVES_AND_WASH, Caution.LIFTING),
                Set.copyOf(plan(LEAVES).cautions()));
    }

    @Test
    @DisplayName("looks after three days and a week and turns after five weeks")
    void days() {
        BuildPlan plan = plan("", List.of(LEAVES), List.of(), true);
        assertEquals(List.of(BUILT.plusDays(3), BUILT.plusDays(7)), plan.looks());
        assertEquals(BUILT.plusDays(35), plan.turn());
        assertTrue(plan.cold());
        assertFalse(plan(LEAVES).cold());
    }
}
