package heapwright.advice.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.audit.BuildPlan.Layer;
import heapwright.advice.audit.BuildPlan.Role;
import heapwright.knowledge.Material;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The layers")
class LayeringTest {

    private final Map<Material, Double> litres = new LinkedHashMap<>();

    @Test
    @DisplayName("start on wood, then on the longest stalks, never more than the base wants")
    void base() {
        put("corn-stalks", 600);
        put("straw-wheat", 300);
        put("twigs", 80);
        Layering laid = Layering.of(litres, Map.of(material("corn-stalks"), 40.0), 1);
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
        List<Role> roles = Layering.of(litres, Map.of(), 1).layers().stream()
                .map(Layer::role)
                .toList();
        assertEquals(List.of(Role.BROWN, Role.GREEN, Role.SPRINKLE), roles);
    }

    @Test
    @DisplayName("repeat about every forearm, and once where there is little")
    void rounds() {
        put("leaves-mixed", 1400);
        assertEquals(4, Layering.of(litres, Map.of(), 1).rounds());
        litres.clear();
        put("leaves-mixed", 30);
        assertEquals(1, Layering.of(litres, Map.of(), 1).rounds());
    }

    @Test
    @DisplayName("put little stuff into fewer rounds rather than a trace into each")
    void little() {
        put("leaves-mixed", 1400);
        put("coffee-grounds", 10);
        put("leaf-mould", 1);
        Layering laid = Layering.of(litres, Map.of(), 1);
        Layer coffee = laid.layers().get(1);
        assertEquals(2, coffee.times());
        assertEquals(5, coffee.litres(), 1e-9);
        assertTrue(laid.layers().get(2).times() == 2 && laid.layers().get(2).litres() >= 0.5);
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
