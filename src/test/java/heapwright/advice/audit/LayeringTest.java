package heapwright.advice.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.audit.BuildPlan.Layer;
import heapwright.advice.audit.BuildPlan.Role;
import heapwright.knowledge.Material;
import heapwright.process.mixture.Density;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The layers")
class LayeringTest {

    private final Map<Material, Double> litres = new LinkedHashMap<>();

    private Layering laid(Map<Material, Double> longestCm, double area) {
        return Layering.of(litres, litres, longestCm, area);
    }

    @Test
    @DisplayName(
            "mix in what the mend adds: the base takes only half of what the recipe brings of chips, and all of its twigs")
    void mended() {
        put("chips-hardwood", 180);
        put("grass-clippings", 200);
        assertEquals(
                List.of(),
                ids(Layering.of(litres, Map.of(material("grass-clippings"), 200.0), Map.of(), 1)
                        .base()));
        Layering some = Layering.of(litres, Map.of(material("chips-hardwood"), 60.0), Map.of(), 1);
        assertEquals(30, some.base().get(0).litres(), 1e-9);
        assertEquals(
                150,
                some.layers().stream()
                        .filter(l -> l.material().equals("chips-hardwood"))
                        .mapToDouble(l -> l.litres() * l.times())
                        .sum(),
                1e-9);
    }

    @Test
    @DisplayName("start on wood, then on the longest stalks, never more than the base wants")
    void base() {
        put("corn-stalks", 600);
        put("straw-wheat", 300);
        put("twigs", 80);
        Layering laid = laid(Map.of(material("corn-stalks"), 40.0), 1);
        assertEquals(List.of("twigs", "corn-stalks"), ids(laid.base()));
        assertEquals(80, laid.base().get(0).litres(), 1e-9);
        assertEquals(70, laid.base().get(1).litres(), 1e-9);
    }

    @Test
    @DisplayName("run from dry to green to a sprinkle")
    void order() {
        put("soil", 20);
        put("grass-clippings", 200);
        put("leaves-mixed", 500);
        List<Role> roles = laid(Map.of(), 1).layers().stream().map(Layer::role).toList();
        assertEquals(List.of(Role.BROWN, Role.GREEN, Role.SPRINKLE), roles);
    }

    @Test
    @DisplayName("repeat about every forearm, and once where there is little")
    void rounds() {
        put("leaves-mixed", 1400);
        assertEquals(4, laid(Map.of(), 1).rounds());
        litres.clear();
        put("leaves-mixed", 30);
        assertEquals(1, laid(Map.of(), 1).rounds());
    }

    @Test
    @DisplayName("lay grass no thicker than a hand's breadth")
    void grass() {
        put("leaves-mixed", 300);
        put("grass-clippings", 450);
        Layering laid = laid(Map.of(), 1);
        assertEquals(5, laid.rounds());
        Layer grass = laid.layers().stream()
                .filter(l -> l.material().equals("grass-clippings"))
                .findFirst()
                .orElseThrow();
        assertEquals(9, grass.thicknessCm(), 1e-9);
        litres.clear();
        put("leaves-mixed", 750);
        assertEquals(2, laid(Map.of(), 1).rounds(), "leaves may lie thicker");
    }

    @Test
    @DisplayName("put little stuff into fewer rounds rather than a trace into each")
    void little() {
        put("leaves-mixed", 1400);
        put("coffee-grounds", 10);
        put("leaf-mould", 1);
        Layering laid = laid(Map.of(), 1);
        Layer coffee = laid.layers().get(1);
        assertEquals(2, coffee.times());
        assertEquals(5, coffee.litres(), 1e-9);
        assertTrue(laid.layers().get(2).times() == 2 && laid.layers().get(2).litres() >= 0.5);
    }

    @Test
    @DisplayName("weigh what a bucket of it weighs and lie as high as their litres on the ground that there is")
    void layer() {
        put("leaves-mixed", 1400);
        put("twigs", 60);
        Layering laid = laid(Map.of(), 2);
        assertEquals(2, laid.rounds(), "0.7 m on 2 square metres");
        Layer leaves = laid.layers().get(0);
        assertEquals(700, leaves.litres(), 1e-9);
        assertEquals(2, leaves.times());
        assertEquals(35, leaves.thicknessCm(), 1e-9, "0.7 cubic metres on 2 square metres");
        assertEquals(0.7 * Density.byHand(material("leaves-mixed")).likely(), leaves.kg(), 1e-9);
        Layer twigs = laid.base().get(0);
        assertEquals(3, twigs.thicknessCm(), 1e-9);
        assertEquals(0.06 * Density.byHand(material("twigs")).likely(), twigs.kg(), 1e-9);
        assertEquals(1, twigs.times());
    }

    @Test
    @DisplayName("take all of the coarse stuff for the base where less than half a bucket of it would be left over")
    void whole() {
        put("twigs", 154);
        assertEquals(154, laid(Map.of(), 1).base().get(0).litres(), 1e-9, "150 are wanted");
        litres.clear();
        put("twigs", 155);
        Layering laid = laid(Map.of(), 1);
        assertEquals(150, laid.base().get(0).litres(), 1e-9);
        assertEquals(5, laid.layers().get(0).litres(), 1e-9, "the rest is laid in");
        litres.clear();
        put("twigs", 146);
        put("corn-stalks", 50);
        assertEquals(List.of("twigs"), ids(laid(Map.of(), 1).base()), "4 litres more are not worth it");
        litres.clear();
        put("twigs", 145);
        put("corn-stalks", 50);
        assertEquals(List.of("twigs", "corn-stalks"), ids(laid(Map.of(), 1).base()));
        litres.clear();
        put("twigs", 0);
        put("leaves-mixed", 0);
        put("grass-clippings", 20);
        Layering none = laid(Map.of(), 1);
        assertEquals(List.of(), none.base());
        assertEquals(List.of("grass-clippings"), ids(none.layers()), "what there is none of is not laid");
    }

    @Test
    @DisplayName("lie by their kind, then the most first, and of as much by name")
    void byAmount() {
        put("coffee-grounds", 100);
        put("cardboard", 200);
        put("kitchen-scraps", 300);
        put("leaves-mixed", 200);
        put("grass-clippings", 100);
        assertEquals(
                List.of("cardboard", "leaves-mixed", "kitchen-scraps", "coffee-grounds", "grass-clippings"),
                ids(laid(Map.of(), 1).layers()));
    }

    @Test
    @DisplayName("take equally long stalks by name, and any stalks before none that are known to be long")
    void equallyLong() {
        put("corn-stalks", 20);
        put("chips-hardwood", 20);
        put("twigs", 20);
        assertEquals(
                List.of("chips-hardwood", "twigs", "corn-stalks"),
                ids(laid(Map.of(), 1).base()));
        assertEquals(
                List.of("twigs", "chips-hardwood", "corn-stalks"),
                ids(laid(Map.of(material("twigs"), 30.0), 1).base()));
    }

    @Test
    @DisplayName("repeat eight times at most")
    void most() {
        put("leaves-mixed", 20_000);
        assertEquals(8, laid(Map.of(), 1).rounds());
    }

    private void put(String id, double amount) {
        litres.put(material(id), amount);
    }

    private static Material material(String id) {
        return Audits.advisor().knowledge().materials().get(id);
    }

    private static List<String> ids(List<Layer> layers) {
        return layers.stream().map(Layer::material).toList();
    }
}
