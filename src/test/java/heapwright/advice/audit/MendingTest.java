package heapwright.advice.audit;

import static heapwright.advice.audit.Audits.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.pile.Pile;
import heapwright.process.dose.Limits;
import heapwright.process.dose.PileStock;
import heapwright.process.dose.Supply;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Goals;
import heapwright.process.mend.Heap;
import heapwright.process.mend.Mender;
import heapwright.process.mend.MissedGoal;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.Portion;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Recipes and what is at hand are invented; a bucket holds ten litres. */
@DisplayName("The mend of a recipe")
class MendingTest {

    private static final Knowledge KNOWLEDGE = KnowledgeReader.packed();
    private static final Limits LIMITS = new Limits(KNOWLEDGE.limits().entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, one -> one.getValue().value())));
    private static final double BUCKET = 10;

    private static final String LEAVES = some("leaves-mixed", 60, "bucket");
    private static final String GRASS = some("grass-clippings", 22, "bucket");

    private static final String RIGHT = some("leaves-mixed", 40, "bucket") + "," + some("grass-clippings", 15, "bucket")
            + "," + some("kitchen-scraps", 5, "bucket");

    private record Asked(Pile pile, Materials materials, Mixture mixture, Mend mend) {

        Heap heap() {
            return Heap.of(PileStock.of(mixture));
        }

        Offer offer(String id) {
            return mend.offers().stream()
                    .filter(o -> o.id().equals(id))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static Asked asked(String recipe, String atHand, double bucketLitres) {
        return asked(recipe, atHand, bucketLitres, Goals.good(LIMITS));
    }

    private static Asked asked(String recipe, String atHand, double bucketLitres, Goals goals) {
        Pile pile = Audits.pile(recipe, ",\"atHand\":[" + atHand + "]");
        Materials materials = Materials.of(KNOWLEDGE.materials(), pile.materials());
        Mixture mixture =
                PileMixture.of(pile, materials, new MixtureCalculator()).orElseThrow();
        Mend mend = new Mending(materials, new KeepOuts(KNOWLEDGE), LIMITS, goals, bucketLitres).mend(pile, mixture, 0);
        return new Asked(pile, materials, mixture, mend);
    }

    private static Asked asked(String recipe, String... atHand) {
        return asked(recipe, String.join(",", atHand), BUCKET);
    }

    private static String unbounded(String material) {
        return "{\"material\":\"" + material + "\"}";
    }

    private static void whole(double litres, double bucketLitres) {
        assertEquals(Math.rint(litres / bucketLitres), litres / bucketLitres, 1e-6);
    }

    private static List<String> ids(Plan plan) {
        return plan.additions().stream().map(Addition::material).toList();
    }

    @Test
    @DisplayName("is sought among what mends, not among soil, compost, minerals, salt, sugar or what must stay out")
    void offers() {
        String[] all = {
            unbounded("leaves-mixed"), unbounded("grass-clippings"), unbounded("twigs"), unbounded("manure-hen-home"),
            unbounded("soybean-meal"), unbounded("blood-meal"), unbounded("urea"), unbounded("soil"),
            unbounded("compost-finished"), unbounded("wood-ash"), unbounded("sugar"), unbounded("urine"),
            unbounded("seaweed"), unbounded("hops-spent"), unbounded("dog-faeces")
        };
        List<String> mends = List.of(
                "water",
                "leaves-mixed",
                "grass-clippings",
                "twigs",
                "manure-hen-home",
                "soybean-meal",
                "blood-meal",
                "urea");
        assertEquals(
                mends,
                asked(LEAVES, all).mend().offers().stream().map(Offer::id).toList());
        List<String> beside = asked(LEAVES + "," + some("wood-ash", 1, "cup"), all).mend().offers().stream()
                .map(Offer::id)
                .toList();
        assertEquals(
                List.of("water", "leaves-mixed", "grass-clippings", "twigs", "soybean-meal"),
                beside,
                "ash would drive off the nitrogen of dung and of what frees it at once");
    }

    @Test
    @DisplayName("counts what is at hand by weight, by the bucket as it is filled, or as without end")
    void available() {
        Asked asked = asked(
                LEAVES,
                some("grass-clippings", 3, "bucket"),
                some("soybean-meal", 4, "kg"),
                unbounded("manure-hen-home"));
        Material grass = KNOWLEDGE.materials().get("grass-clippings");
        double byHand = Portion.ofKilograms(grass, 1).litres().likely();
        assertEquals(30 / byHand, asked.offer("grass-clippings").mostKg(), 1e-9);
        assertEquals(4, asked.offer("soybean-meal").mostKg(), 1e-9);
        assertEquals(Double.POSITIVE_INFINITY, asked.offer("manure-hen-home").mostKg());
        assertTrue(asked.mend().anythingAtHand());
        assertFalse(asked(LEAVES).mend().anythingAtHand());
    }

    /** Urea holds 46 % nitrogen; the most to give so is two thirds of what brings the carbon of a season to 30:1. */
    @Test
    @DisplayName("gives no more fertiliser than a part of what lacks, nor than there is")
    void fertiliser() {
        Asked lean = asked(some("leaves-old-brown", 100, "kg"), some("urea", 10, "kg"));
        Heap heap = lean.heap();
        double lacking = heap.carbonKg() / 30 - heap.nitrogenKg();
        assertTrue(lacking > 0.1);
        assertEquals(0.67 * lacking / 0.46, lean.offer("urea").mostKg(), 0.01 * lacking);
        assertEquals(
                0.02,
                asked(some("leaves-old-brown", 100, "kg"), some("urea", 20, "g"))
                        .offer("urea")
                        .mostKg(),
                1e-9);
        assertEquals(0, asked(GRASS, some("urea", 10, "kg")).offer("urea").mostKg(), 1e-9, "grass has nitrogen enough");
    }

    private static double coarsePct(Asked asked, Addition more, double kg) {
        List<Portion> all = new ArrayList<>(PileMixture.portions(asked.pile(), asked.materials()));
        all.add(Portion.ofKilograms(asked.materials().get(more.material()), kg));
        return new MixtureCalculator().mix(all).coarseSharePct();
    }

    @Test
    @DisplayName("opens a close mix with whole buckets of coarse stuff: so many as it takes, and not one more")
    void opening() {
        double least = LIMITS.of(Limit.COARSE_SHARE_LOW);
        Asked asked = asked(GRASS + "," + some("leaves-mixed", 20, "bucket"), some("twigs", 50, "bucket"));
        Addition opening = asked.mend().opening().orElseThrow();
        double bucket = opening.kg() / (opening.litres() / BUCKET);
        whole(opening.litres(), BUCKET);
        assertTrue(coarsePct(asked, opening, opening.kg()) >= least - 1e-9, opening.toString());
        assertTrue(coarsePct(asked, opening, opening.kg() - bucket) < least, opening.toString());
        Addition twelve = asked(GRASS + "," + some("leaves-mixed", 20, "bucket"), some("twigs", 50, "bucket"), 12)
                .mend()
                .opening()
                .orElseThrow();
        whole(twelve.litres(), 12);
        assertTrue(asked.mend().needed());
    }

    @Test
    @DisplayName("takes wood before straw, then that of which there is most, and all of it where that is too little")
    void whichOpens() {
        String close = some("grass-clippings", 40, "bucket");
        Addition wood = asked(
                        close,
                        some("straw-wheat", 80, "bucket"),
                        some("twigs", 2, "bucket"),
                        some("chips-hardwood", 3, "bucket"))
                .mend()
                .opening()
                .orElseThrow();
        assertEquals("chips-hardwood", wood.material());
        assertEquals(30, wood.litres(), 1e-6);
        Addition straw = asked(close, some("leaves-mixed", 50, "bucket"), some("straw-wheat", 80, "bucket"))
                .mend()
                .opening()
                .orElseThrow();
        assertEquals("straw-wheat", straw.material());
        assertTrue(
                asked(close, some("leaves-mixed", 50, "bucket"))
                        .mend()
                        .opening()
                        .isEmpty(),
                "leaves open nothing");
        String open = close + "," + some("twigs", 40, "bucket");
        assertTrue(asked(open, some("twigs", 50, "bucket")).mend().opening().isEmpty(), "open enough");
    }

    /** Leaves are lean already, and each bucket of twigs makes them leaner; with no greens at hand none goes in. */
    @Test
    @DisplayName("opens with less, or not at all, where the wood would starve the mix")
    void spoiled() {
        assertTrue(asked(LEAVES, some("twigs", 50, "bucket")).mend().opening().isEmpty());
        String near = some("leaves-mixed", 52, "bucket") + "," + some("grass-clippings", 18, "bucket") + ","
                + some("kitchen-scraps", 5, "bucket");
        Asked rich = asked(near, some("straw-wheat", 30, "bucket"));
        Addition less = rich.mend().opening().orElseThrow();
        assertTrue(rich.mend().chosen().meetsAll());
        whole(less.litres(), BUCKET);
        assertTrue(coarsePct(rich, less, less.kg()) < LIMITS.of(Limit.COARSE_SHARE_LOW));
        Heap twice = rich.heap().with(rich.offer("straw-wheat"), 2 * less.kg());
        assertFalse(
                new Mender(LIMITS).mend(twice, List.of(Offer.water())).meetsAll(), "twice as much would be too much");
    }

    @Test
    @DisplayName("adds up: the pile after it is the pile before and all that is added, and its work is what is carried")
    void addsUp() {
        Asked asked = asked(
                GRASS + "," + some("leaves-mixed", 20, "bucket"),
                some("twigs", 50, "bucket"),
                some("leaves-old-brown", 90, "bucket"));
        for (Plan plan : List.of(asked.mend().exact(), asked.mend().chosen())) {
            double carried = plan.additions().stream().mapToDouble(Addition::kg).sum();
            assertEquals(asked.heap().wetKg() + carried, plan.after().wetKg(), 1e-6);
            assertEquals(carried, plan.effort(), 1e-6);
            assertEquals("twigs", plan.additions().get(0).material(), "what opens it goes first");
        }
        assertTrue(asked.mend().chosen().meetsAll());
    }

    /** Wet clippings want dry stuff as well as coarse, and straw is both. */
    @Test
    @DisplayName("tells of one material as one amount, though some of it opens and some mends")
    void oneAmount() {
        Asked asked = asked(some("grass-clippings", 40, "bucket"), some("straw-wheat", 300, "bucket"));
        Plan plan = asked.mend().exact();
        Addition opening = asked.mend().opening().orElseThrow();
        Addition straw = plan.additions().get(0);
        assertEquals(
                List.of("straw-wheat"),
                ids(plan).stream().filter("straw-wheat"::equals).toList());
        assertTrue(straw.kg() > opening.kg() + 1, straw + " with " + opening);
        assertEquals(opening.litres() / opening.kg(), straw.litres() / straw.kg(), 1e-9);
        assertTrue(straw.kg() <= asked.offer("straw-wheat").mostKg() + 1e-9);
    }

    @Test
    @DisplayName("takes no more of what opens than there is, though the rest would mend")
    void rest() {
        Asked asked = asked(
                some("grass-clippings", 40, "bucket"),
                some("straw-wheat", 30, "bucket"),
                some("leaves-old-brown", 300, "bucket"));
        Addition straw = asked.mend().chosen().additions().get(0);
        assertEquals("straw-wheat", straw.material());
        assertTrue(straw.kg() <= asked.offer("straw-wheat").mostKg() + 1e-9, straw.toString());
        Asked little = asked(some("grass-clippings", 40, "bucket"), some("straw-wheat", 20, "bucket"));
        Plan all = little.mend().exact();
        assertFalse(all.meetsAll());
        assertEquals(List.of("straw-wheat"), ids(all));
        assertEquals(
                little.offer("straw-wheat").mostKg(), all.additions().get(0).kg(), 1e-6, "all of it, and no more");
    }

    /** Judgement: a plan with fewer things may take 15 % more work. */
    @Test
    @DisplayName("fetches few things: none that could be spared for little more work, and work within that")
    void fewest() {
        String[] heaps = {some("leaves-old-brown", 60, "bucket"), GRASS, LEAVES};
        String[] atHand = {
            some("grass-clippings", 40, "bucket"),
            some("kitchen-scraps", 40, "bucket"),
            some("coffee-grounds", 40, "bucket"),
            some("manure-hen-home", 40, "bucket"),
            some("leaves-maple", 90, "bucket"),
            some("leaves-old-brown", 90, "bucket"),
            some("cardboard", 90, "bucket")
        };
        Mender mender = new Mender(LIMITS);
        for (String recipe : heaps) {
            Asked asked = asked(recipe, atHand);
            Plan exact = asked.mend().exact();
            double least = mender.mend(asked.heap(), asked.mend().offers()).effort();
            assertTrue(exact.meetsAll());
            assertTrue(exact.effort() <= 1.15 * least + 1e-6, exact.effort() + " of " + least);
            Predicate<Offer> used =
                    o -> o.id().equals(Offer.WATER) || ids(exact).contains(o.id());
            List<Offer> few = asked.mend().offers().stream().filter(used).toList();
            for (String one : ids(exact)) {
                Plan without = mender.mend(
                        asked.heap(),
                        few.stream().filter(o -> !o.id().equals(one)).toList());
                assertTrue(!without.meetsAll() || without.effort() > 1.15 * least, one + " could be spared");
            }
        }
    }

    /** 115 % of the least work are 63.6 kg with one and a half buckets of dung at hand, and 60.9 kg with two. */
    @Test
    @DisplayName("leaves a bucket and a half of dung where it lies, if scraps alone are 63 kg to carry instead of 55")
    void spared() {
        Mender mender = new Mender(LIMITS);
        String leaves = some("leaves-old-brown", 60, "bucket");
        String scraps = some("kitchen-scraps", 90, "bucket");
        Asked some = asked(leaves, some("manure-hen-home", 1.5, "bucket"), scraps);
        Plan least = mender.mend(some.heap(), some.mend().offers());
        assertEquals(List.of("water", "manure-hen-home", "kitchen-scraps"), ids(least));
        assertEquals(List.of("water", "kitchen-scraps"), ids(some.mend().exact()));
        assertEquals(55.3, least.effort(), 0.1);
        assertEquals(62.5, some.mend().exact().effort(), 0.1);
        Asked more = asked(leaves, some("manure-hen-home", 2, "bucket"), scraps);
        assertEquals(52.9, mender.mend(more.heap(), more.mend().offers()).effort(), 0.1);
        assertTrue(ids(more.mend().exact()).contains("manure-hen-home"), "two buckets save more than that");
    }

    @Test
    @DisplayName("comes in whole buckets where they do, else as it comes")
    void buckets() {
        Asked asked = asked(LEAVES, some("kitchen-scraps", 60, "bucket"));
        Plan whole = asked.mend().buckets().orElseThrow();
        assertEquals(whole, asked.mend().chosen());
        whole.additions().forEach(a -> whole(a.litres(), BUCKET));
        assertTrue(whole.effort() >= asked.mend().exact().effort() - 1e-9, "whole ones are no less work");
        Asked hopeless = asked(LEAVES);
        assertTrue(hopeless.mend().buckets().isEmpty());
        assertEquals(hopeless.mend().exact(), hopeless.mend().chosen());
    }

    @Test
    @DisplayName("where nothing at hand does, names one common thing that would, with the whole plan")
    void unlock() {
        Asked lean = asked(some("leaves-old-brown", 60, "bucket"), some("leaves-mixed", 20, "bucket"));
        assertEquals(Set.of(MissedGoal.TOO_LITTLE_NITROGEN), lean.mend().exact().misses());
        Mend.Unlock unlock = lean.mend().unlock().orElseThrow();
        assertTrue(unlock.plan().meetsAll());
        assertTrue(ids(unlock.plan()).containsAll(unlock.materials()));
        unlock.plan().additions().forEach(a -> whole(a.litres(), BUCKET));
        Mender mender = new Mender(LIMITS);
        Offer dung = Offer.of(KNOWLEDGE.materials().get("manure-hen-home"), Double.POSITIVE_INFINITY);
        Offer clippings = Offer.of(KNOWLEDGE.materials().get("grass-clippings"), Double.POSITIVE_INFINITY);
        Offer best = List.of(dung, clippings).stream()
                .min(Comparator.comparingDouble(
                        o -> mender.mend(lean.heap(), List.of(Offer.water(), o)).effort()))
                .orElseThrow();
        assertEquals(List.of(best.id()), unlock.materials(), "the least to carry");
        Asked wet = asked(GRASS);
        assertTrue(wet.mend().unlock().orElseThrow().plan().meetsAll());
        assertTrue(KNOWLEDGE
                .materials()
                .get(wet.mend().unlock().orElseThrow().materials().get(0))
                .traits()
                .contains(heapwright.knowledge.Trait.BROWN));
        Asked withAsh = asked(some("leaves-old-brown", 60, "bucket") + "," + some("wood-ash", 1, "cup"));
        assertTrue(
                withAsh.mend().unlock().orElseThrow().materials().stream().noneMatch(m -> m.startsWith("manure")),
                "not beside ash");
        assertTrue(asked(LEAVES, some("kitchen-scraps", 60, "bucket"))
                .mend()
                .unlock()
                .isEmpty());
    }

    @Test
    @DisplayName("asks for no grass in winter and for no fallen leaves in summer")
    void ofTheMonth() {
        Materials materials = Materials.of(KNOWLEDGE.materials(), List.of());
        List<String> december = usual(materials, Month.DECEMBER, false);
        List<String> june = usual(materials, Month.JUNE, true);
        assertFalse(december.contains("grass-clippings"));
        assertTrue(december.contains("leaves-mixed"));
        assertTrue(june.contains("grass-clippings"));
        assertFalse(june.contains("leaves-mixed") || june.contains("leaves-old-brown"));
        assertTrue(december.contains("straw-general") && june.contains("straw-general"));
    }

    private static List<String> usual(Materials materials, Month month, boolean grass) {
        return CommonMaterials.of(materials, new Supply(month, grass)).stream()
                .map(Material::id)
                .toList();
    }

    @Test
    @DisplayName("of a thing at hand of which there is too little names more of the same where that would do")
    void moreOfTheSame() {
        String lean = some("leaves-old-brown", 60, "bucket");
        String wanted = asked(lean).mend().unlock().orElseThrow().materials().get(0);
        Asked some = asked(lean, some(wanted, 1, "bucket"));
        assertEquals(List.of(wanted), some.mend().unlock().orElseThrow().materials());
        Plan plan = some.mend().unlock().orElseThrow().plan();
        assertTrue(plan.meetsAll());
        assertEquals(1, ids(plan).stream().filter(wanted::equals).count(), "told as one amount");
    }

    @Test
    @DisplayName("is not needed where the recipe is right and open")
    void right() {
        Asked right = asked(RIGHT);
        Asked wanting = asked(LEAVES);
        assertTrue(wanting.mend().needed());
        assertFalse(right.mend().needed());
        assertEquals(List.of(), ids(right.mend().exact()));
    }

    @Test
    @DisplayName("fetches nothing for less than a hundredth of the pile, unless it is fertiliser")
    void trifle() {
        String bread = some("leaves-mixed", 10, "bucket") + "," + some("grass-clippings", 4, "bucket") + ",";
        Asked near = asked(bread + some("bread", 2, "kg"));
        assertFalse(new Mender(LIMITS).mend(near.heap(), List.of(Offer.water())).meetsAll(), "a hair short of good");
        assertFalse(near.mend().needed());
        assertEquals(List.of(), ids(near.mend().chosen()));
        assertTrue(near.mend().unlock().isEmpty());
        Asked far = asked(some("leaves-mixed", 12, "bucket") + "," + some("grass-clippings", 3, "bucket"));
        assertTrue(far.mend().needed() && far.mend().unlock().isPresent());
    }

    /** What is rich only until its wood has given its carbon is let be, and that is said with it, whether it wants mending or not. */
    @Test
    @DisplayName("says where nitrogen is to spare until the carbon of the wood comes")
    void richAtFirst() {
        Goals late = Goals.good(LIMITS).withLateCarbon(LIMITS.of(Limit.CN_GOOD_LOW) - 4);
        String trifle = some("leaves-mixed", 10, "bucket") + "," + some("grass-clippings", 4, "bucket") + ","
                + some("bread", 2, "kg");
        for (String recipe : List.of(RIGHT, LEAVES, trifle)) {
            assertTrue(asked(recipe, "", BUCKET, late).mend().richAtFirst(), recipe);
            assertFalse(asked(recipe).mend().richAtFirst(), recipe);
        }
    }
}
