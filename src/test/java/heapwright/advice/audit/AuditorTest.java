package heapwright.advice.audit;

import static heapwright.advice.audit.Audits.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Topic;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.pile.Pile;
import heapwright.process.mend.Addition;
import heapwright.process.mixture.Averaging.Shortcut;
import heapwright.process.mixture.CarbonCheck.Verdict;
import heapwright.process.mixture.Masses;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The audit")
class AuditorTest {

    private static final String LEAVES = some("leaves-mixed", 60, "bucket");
    private static final String GRASS = some("grass-clippings", 22, "bucket");

    static List<Material> barred() {
        return Audits.advisor().knowledge().materials().values().stream()
                .filter(m -> m.keepOut().isPresent())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("barred")
    @DisplayName(
            "finds every barred material by its id and by all that people call it, with reason and what to do instead")
    void findsBarred(Material material) {
        List<String> words = new ArrayList<>(material.aliases());
        words.add(material.id());
        for (String word : words) {
            Audit audit = Audits.of(some(word, 2, "bucket") + "," + LEAVES, "");
            Material found = audit.barred().get(0);
            assertEquals(material.id(), found.id(), word);
            Material.KeepOut bar = found.keepOut().orElseThrow();
            assertFalse(bar.reason().isBlank() || bar.instead().isBlank(), word);
            boolean out = bar.bar() != Material.Bar.WITH_CARE;
            boolean laid = audit.proposal().orElseThrow().build().orElseThrow().plan().layers().stream()
                    .anyMatch(l -> l.material().equals(material.id()));
            assertTrue(!(out && laid), word + " must not be built in");
            assertTrue(bar.bar() != Material.Bar.NEVER || audit.mark() == Mark.OUT, word);
        }
    }

    @Test
    @DisplayName("tells the worst first")
    void worstFirst() {
        Audit audit = Audits.of(
                some("dog-faeces", 1, "bucket") + "," + GRASS + "," + some("kitchen-scraps", 5, "bucket"), "");
        List<Mark> marks = audit.judgements().stream().map(Judgement::mark).toList();
        assertEquals(marks.stream().sorted(Comparator.reverseOrder()).toList(), marks);
        assertEquals(Mark.OUT, audit.mark());
    }

    @Test
    @DisplayName("proposes nothing where nothing may go in")
    void nothingLeft() {
        assertTrue(Audits.of(some("dog-faeces", 5, "kg"), "").proposal().isEmpty());
    }

    @Test
    @DisplayName("is empty without a recipe")
    void noRecipe() {
        Pile pile = Audits.pile("", "");
        assertTrue(Audits.advisor().audit(pile, OptionalDouble.empty()).isEmpty());
    }

    @Test
    @DisplayName("explains a C:N that is the average by volume, and is silent on a right one")
    void averages() {
        Pile pile = Audits.pile(some("grass", 2, "bucket") + "," + some("leaves", 1, "bucket"), OWN);
        Audit audit = Audits.advisor().audit(pile, OptionalDouble.of(33)).orElseThrow();
        assertEquals(Shortcut.BY_VOLUME, audit.ownFigure().orElseThrow().shortcut());
        double right = audit.mixture().allCarbonToNitrogen().likely();
        assertTrue(Math.abs(right - 33) > 2, "the mass balance differs: " + right);
        assertTrue(Audits.advisor()
                .audit(pile, OptionalDouble.of(right))
                .orElseThrow()
                .ownFigure()
                .isEmpty());
    }

    private static final String OWN =
            ",\"materials\":[{\"id\":\"grass\",\"like\":\"grass-clippings\",\"carbonToNitrogen\":20},"
                    + "{\"id\":\"leaves\",\"like\":\"leaves-mixed\",\"carbonToNitrogen\":60}]";

    @Test
    @DisplayName("flags an own pair that implies more carbon than there can be, and a misprint whose carbon passes")
    void ownPairs() {
        Audit audit = Audits.of(
                some("dust", 10, "kg") + "," + some("needles", 10, "kg") + "," + some("good", 10, "kg"),
                ",\"materials\":[{\"id\":\"dust\",\"like\":\"sawdust\",\"carbonToNitrogen\":442,"
                        + "\"nitrogen\":{\"value\":0.24,\"unit\":\"%\"}},"
                        + "{\"id\":\"needles\",\"like\":\"pine-needles\",\"carbonToNitrogen\":10,"
                        + "\"nitrogen\":{\"value\":4,\"unit\":\"%\"}},"
                        + "{\"id\":\"good\",\"like\":\"leaves-mixed\",\"carbonToNitrogen\":50,"
                        + "\"nitrogen\":{\"value\":0.9,\"unit\":\"%\"}}]");
        assertEquals(
                List.of("dust", "needles"),
                audit.ownPairs().stream().map(OwnFigureDoubt::material).toList());
        assertEquals(Verdict.TOO_MUCH_CARBON, audit.ownPairs().get(0).check().verdict());
        assertTrue(audit.ownPairs().get(1).unusual());
    }

    @Test
    @DisplayName("judges the size by what the recipe makes, not by what the bin could hold")
    void sizeOfRecipe() {
        String bin = ",\"container\":{\"kind\":\"slatted-bin\",\"length\":{\"value\":1,\"unit\":\"m\"},"
                + "\"width\":{\"value\":1,\"unit\":\"m\"},\"height\":{\"value\":1,\"unit\":\"m\"}}";
        Audit small = Audits.of(some("leaves-mixed", 20, "bucket") + "," + some("grass-clippings", 8, "bucket"), bin);
        assertEquals(Mark.SLOW, mark(small, Topic.SIZE));
        assertTrue(small.proposal().orElseThrow().times() > 2);
        assertEquals(
                BuildPlan.Fit.PART,
                small.proposal().orElseThrow().build().orElseThrow().plan().fit());
        Audit cage = Audits.of(some("leaves-mixed", 20, "bucket"), ",\"container\":{\"kind\":\"leaf-cage\"}");
        assertEquals(1, cage.proposal().orElseThrow().times(), "leaf mould needs no heat");
        Audit full = Audits.of(some("leaves-mixed", 95, "bucket") + "," + some("grass-clippings", 40, "bucket"), bin);
        assertEquals(Mark.FITS, mark(full, Topic.SIZE));
        assertEquals(1, full.proposal().orElseThrow().times());
        Audit over = Audits.of(some("leaves-mixed", 190, "bucket") + "," + some("grass-clippings", 80, "bucket"), bin);
        assertEquals(
                BuildPlan.Fit.OVER,
                over.proposal().orElseThrow().build().orElseThrow().plan().fit());
    }

    @Test
    @DisplayName("plans no heap for what is filled little by little and works cold")
    void coldKinds() {
        String mix = some("kitchen-scraps", 8, "bucket") + "," + some("cardboard", 12, "bucket");
        for (String kind : List.of("trench", "worm-bin", "bokashi")) {
            Audit cold = Audits.of(mix, ",\"container\":{\"kind\":\"" + kind + "\"}");
            assertTrue(cold.proposal().isEmpty(), kind);
        }
        assertTrue(Audits.of(mix, ",\"container\":{\"kind\":\"fed-bin\"}")
                .proposal()
                .isPresent());
    }

    @Test
    @DisplayName("mends with coarse stuff at hand where too little holds the mix open, unless that spoils the goals")
    void opening() {
        Audit audit = Audits.of(
                LEAVES + "," + GRASS,
                ",\"atHand\":[" + some("twigs", 30, "bucket") + "," + some("manure-hen-home", 9, "bucket") + "]");
        Mend mend = audit.proposal().orElseThrow().mend();
        Addition first = mend.opening().orElseThrow();
        assertEquals("twigs", first.material());
        assertTrue(mend.chosen().meetsAll());
        String right = some("leaves-mixed", 40, "bucket") + "," + some("grass-clippings", 15, "bucket") + ","
                + some("kitchen-scraps", 5, "bucket");
        Audit alone = Audits.of(right, ",\"atHand\":[" + some("twigs", 30, "bucket") + "]");
        assertTrue(alone.proposal().orElseThrow().mend().chosen().meetsAll(), "less wood rather than too lean a mix");
    }

    @Test
    @DisplayName(
            "gives fertiliser only as a part of the need, in doses that the pile can hold, weak enough and days apart")
    void fertiliser() {
        Audit audit =
                Audits.of(some("leaves-old-brown", 120, "bucket"), ",\"atHand\":[" + some("urea", 10, "kg") + "]");
        Proposal proposal = audit.proposal().orElseThrow();
        BuildPlan.Feed feed = proposal.build().orElseThrow().plan().feeds().get(0);
        double lacking = audit.mixture().masses().carbon().likely() / 30
                - audit.mixture().masses().nitrogen().likely();
        assertTrue(feed.kg() * 0.46 <= 0.67 * lacking + 1e-6, feed.toString());
        double once = feed.kgEach() * 460;
        double volume = proposal.build().orElseThrow().plan().lengthM()
                * proposal.build().orElseThrow().plan().widthM()
                * proposal.build().orElseThrow().plan().heightM();
        assertTrue(once <= 200 * volume + 1e-6, once + " g of nitrogen at once");
        assertTrue(feed.parts() > 1);
        assertEquals(feed.kgEach() * 100, feed.waterLitres(), 1e-9, "1 % is 10 g in a litre");
        assertEquals(
                feed.days().get(0).plusDays((long) Audits.advisor()
                        .knowledge()
                        .limits()
                        .get(Limit.NITROGEN_DOSE_INTERVAL)
                        .value()),
                feed.days().get(1));
        assertTrue(
                proposal.build().orElseThrow().plan().layers().stream()
                        .noneMatch(l -> l.material().equals("urea")),
                "fertiliser is no layer");
        assertTrue(proposal.build().orElseThrow().plan().cautions().contains(Caution.UREA_HANDLING));
    }

    @Test
    @DisplayName("prefers droppings at hand to urea, so that no one buys and splits what is not needed")
    void droppingsBeforeUrea() {
        Audit audit = Audits.of(
                some("leaves-old-brown", 60, "bucket"),
                ",\"atHand\":[" + some("urea", 10, "kg") + "," + some("manure-hen-home", 20, "bucket") + "]");
        String added = audit.proposal().orElseThrow().mend().chosen().additions().stream()
                .map(Addition::material)
                .collect(Collectors.joining(" "));
        assertTrue(added.contains("manure-hen-home") && !added.contains("urea"), added);
    }

    @Test
    @DisplayName("gives no fertiliser for carbon that stays in wood for years")
    void noUreaForWood() {
        String chips = some("chips-hardwood", 60, "bucket") + "," + some("grass-clippings", 20, "bucket");
        Audit audit = Audits.of(chips, ",\"atHand\":[" + some("urea", 10, "kg") + "]");
        Masses masses = audit.mixture().masses();
        double reached = masses.reachableCarbon().likely();
        double season =
                reached / 30 - reached / audit.mixture().carbonToNitrogen().likely();
        double ever = masses.carbon().likely() / 30 - masses.nitrogen().likely();
        assertTrue(season < ever / 2, "most of the carbon is wood");
        double given = audit.proposal().orElseThrow().build().orElseThrow().plan().feeds().stream()
                .mapToDouble(f -> f.kg() * 0.46)
                .sum();
        assertTrue(given > 0 && given <= 0.67 * season + 1e-6, given + " of " + season);
    }

    @Test
    @DisplayName("leaves ash out of the plan where nitrogen that it would drive off goes in or is at hand")
    void ashWaits() {
        String ash = LEAVES + "," + some("wood-ash", 1, "cup");
        assertEquals(List.of(), Audits.of(ash, "").proposal().orElseThrow().leftOut());
        Audit withUrea = Audits.of(ash, ",\"atHand\":[" + some("urea", 1, "kg") + "]");
        assertEquals(
                List.of("wood-ash"),
                withUrea.proposal().orElseThrow().leftOut().stream()
                        .map(Material::id)
                        .toList());
    }

    @Test
    @DisplayName("cuts soil back to a sprinkle and ash to a dusting")
    void trimmed() {
        Audit audit = Audits.of(
                LEAVES + "," + GRASS + "," + some("soil", 20, "bucket") + "," + some("wood-ash", 1, "bucket"), "");
        Proposal proposal = audit.proposal().orElseThrow();
        assertEquals(
                List.of("soil", "wood-ash"),
                proposal.trimmed().stream().map(t -> t.material().id()).toList());
        double soil = proposal.kept().contributions().stream()
                .filter(c -> c.material().id().equals("soil"))
                .mapToDouble(c -> c.kgWet())
                .sum();
        assertTrue(soil <= 0.1001 * proposal.kept().masses().wet().likely() + 0.1);
    }

    private static Mark mark(Audit audit, Topic topic) {
        return audit.judgements().stream()
                .filter(j -> j.topic() == topic)
                .map(Judgement::mark)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** Leaves left alone take more than a year, a usual home pile 6 to 12 months (CORNFAQ, ILLEXT; published). */
    @Test
    @DisplayName("takes leaves alone for leaf mould, and leaves with manure enough for a heap")
    void leavesWithManureAreAHeap() {
        Audit alone = Audits.of(some("leaves-mixed", 90, "bucket"), "");
        Audit fed = Audits.of(some("leaves-mixed", 90, "bucket"), ",\"atHand\":[{\"material\":\"manure-hen-home\"}]");
        assertEquals(
                LocalDate.of(2027, 10, 18),
                alone.proposal().orElseThrow().build().orElseThrow().ready().earliest());
        assertEquals(
                LocalDate.of(2027, 4, 18),
                fed.proposal().orElseThrow().build().orElseThrow().ready().earliest());
    }

    @Test
    @DisplayName("plans wet grass with the chips that it lacks, and leaves on their own as they are")
    void countsOnWhatItLacks() {
        Proposal.Build grass =
                Audits.of(GRASS, "").proposal().orElseThrow().build().orElseThrow();
        String lacking = grass.countsOn().get(0);
        assertTrue(
                grass.plan().layers().stream().anyMatch(l -> l.material().equals(lacking)), "it is laid into the heap");
        assertTrue(
                grass.plan().base().stream().noneMatch(l -> l.material().equals(lacking)),
                "what holds the mix open is not laid under it");
        Proposal.Build leaves =
                Audits.of(LEAVES, "").proposal().orElseThrow().build().orElseThrow();
        assertTrue(leaves.countsOn().isEmpty(), "lean leaves are slow, and nothing worse");
        Audit pressed = Audits.of(some("apple-pomace", 16, "bucket") + "," + some("leaves-mixed", 20, "bucket"), "");
        Proposal.Build both = pressed.proposal().orElseThrow().build().orElseThrow();
        assertEquals(Set.of("straw-general", "manure-hen-home"), Set.copyOf(both.countsOn()));
        List<String> laid = both.plan().layers().stream().map(l -> l.material()).toList();
        assertTrue(laid.containsAll(both.countsOn()), laid.toString());
        assertEquals(List.of(), both.plan().soak(), "what is to dry a soaked mix is laid dry");
    }

    @Test
    @DisplayName("calls scraps with as much sawdust slow, not lost, and plans them as they are")
    void sawdustHoldsSome() {
        Audit audit = Audits.of(some("sawdust", 5, "bucket") + "," + some("kitchen-scraps", 5, "bucket"), "");
        assertEquals(Mark.SLOW, mark(audit, Topic.CARBON_TO_NITROGEN));
        assertTrue(
                audit.proposal().orElseThrow().build().orElseThrow().countsOn().isEmpty());
        Audit droppings = Audits.of(some("manure-hen-home", 10, "bucket"), "");
        assertEquals(Mark.WRONG, mark(droppings, Topic.CARBON_TO_NITROGEN));
    }
}
