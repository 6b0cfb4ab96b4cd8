package heapwright.advice.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Material;
import heapwright.process.mixture.Portion;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What must stay out of a recipe")
class KeepOutsTest {

    private static final Knowledge KNOWLEDGE = KnowledgeReader.packed();
    private final KeepOuts keepOuts = new KeepOuts(KNOWLEDGE);

    private static Material material(String id) {
        return KNOWLEDGE.materials().get(id);
    }

    private List<String> found(String... ids) {
        return keepOuts
                .of(Stream.of(ids)
                        .map(id -> Portion.ofKilograms(material(id), 1))
                        .toList())
                .stream()
                .map(Material::id)
                .toList();
    }

    private boolean leftOut(String id, String... beside) {
        return keepOuts.leftOut(
                material(id), Stream.of(beside).map(KeepOutsTest::material).toList());
    }

    @Test
    @DisplayName("is told once each, what never goes in first and what goes in with care last")
    void firmest() {
        assertEquals(
                List.of("dog-faeces", "hay-bought", "weeds-in-seed", "newsprint"),
                found("newsprint", "weeds-in-seed", "hay-bought", "leaves-mixed", "dog-faeces", "newsprint"));
        assertEquals(
                Material.Bar.AFTER_TEST,
                material("hay-bought").keepOut().orElseThrow().bar());
        assertEquals(List.of(), found("leaves-mixed", "grass-clippings"));
    }

    @Test
    @DisplayName("is not built in; what may go in with care is")
    void builtIn() {
        assertTrue(leftOut("dog-faeces"));
        assertTrue(leftOut("weeds-in-seed"));
        assertTrue(leftOut("hay-bought"));
        assertFalse(leftOut("newsprint"));
        assertFalse(leftOut("leaves-mixed", "urea"));
        assertTrue(leftOut("baking-soda"), "its sodium stays");
    }

    /** Ammonium turns to ammonia above pH 8 or so (CHEMISTRY); ash and lime are far above that. */
    @Test
    @DisplayName("is ash or lime beside dung or nitrogen that is free at once, not beside clippings")
    void ash() {
        assertFalse(leftOut("wood-ash", "leaves-mixed", "grass-clippings"));
        assertTrue(leftOut("wood-ash", "leaves-mixed", "manure-hen-home"));
        assertTrue(leftOut("wood-ash", "blood-meal"));
        assertTrue(leftOut("lime-ground", "urea"));
        assertFalse(leftOut("soil", "urea"));
        assertTrue(KeepOuts.hasLooseNitrogen(material("urea")));
        assertTrue(KeepOuts.hasLooseNitrogen(material("manure-horse")));
        assertFalse(KeepOuts.hasLooseNitrogen(material("grass-clippings")));
    }

    @Test
    @DisplayName("is known by its own entry")
    void barred() {
        assertEquals(
                "newsprint",
                keepOuts.barred(material("newsprint")).orElseThrow().id());
        assertTrue(keepOuts.barred(material("leaves-mixed")).isEmpty());
    }
}
