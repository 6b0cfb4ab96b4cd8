package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Dose;
import heapwright.knowledge.Material;
import heapwright.knowledge.Remedy;
import heapwright.process.dose.DoseAmount;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Layer;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.mixture.Band;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A step in the model")
class TreatmentTest {

    private static final PileState PILE =
            PileState.cube(Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 30, 6), 12, Envelope.slatted());

    private static final Treatment TREATMENT = new Treatment(PILE, 3);

    private static Band exactly(double value) {
        return new Band(value, value, value);
    }

    private static DoseAmount water(double litres, int parts, int days) {
        return new DoseAmount(
                Dose.values()[0],
                Optional.empty(),
                exactly(litres),
                exactly(litres),
                parts,
                days,
                Band.ZERO,
                Optional.empty(),
                List.of());
    }

    private static DoseAmount stuff(String material, double kg, int parts, int days, double carrier) {
        Material of = TestPile.KNOWLEDGE.materials().get(material);
        return new DoseAmount(
                Dose.values()[0],
                Optional.of(of),
                exactly(kg),
                exactly(kg),
                parts,
                days,
                exactly(carrier),
                Optional.empty(),
                List.of());
    }

    private static List<Event> events(Remedy remedy, DoseAmount... doses) {
        return TREATMENT.of(Map.of(remedy, List.of(doses))).events();
    }

    @Test
    @DisplayName("of water is poured in its parts, so many days apart")
    void water() {
        assertEquals(
                List.of(new Event.Water(0, 10, 25), new Event.Water(3, 10, 25)),
                events(Remedy.ADD_WATER, water(20, 2, 3)));
        assertEquals(List.of(new Event.Water(0, 7, 25)), events(Remedy.WATER_THE_CORE, water(7, 1, 0)));
        assertFalse(TREATMENT.canTry(Remedy.ADD_WATER, List.of()));
        assertFalse(TREATMENT.canTry(Remedy.ADD_WATER, List.of(water(0, 1, 0))), "nothing to give is not tried");
    }

    @ParameterizedTest
    @EnumSource(
            value = Remedy.class,
            names = {"TURN_FULLY", "MIX_THOROUGHLY", "BREAK_UP_MATS", "SPREAD_OUT_ACID_FOOD", "CHOP_COARSE"})
    @DisplayName("that takes the pile apart is a turning")
    void turned(Remedy remedy) {
        assertEquals(List.of(new Event.Turn(0)), events(remedy));
        assertTrue(TREATMENT.canTry(remedy, List.of()));
    }

    @ParameterizedTest
    @EnumSource(
            value = Remedy.class,
            names = {"LOOSEN_SIDES_AND_TOP", "MAKE_AIR_HOLES"})
    @DisplayName("that opens its outside is a loosening")
    void loosened(Remedy remedy) {
        assertEquals(List.of(new Event.Loosen(0)), events(remedy));
    }

    @Test
    @DisplayName("of chopping makes pieces a third as long")
    void chopped() {
        assertEquals(
                2,
                TREATMENT
                        .of(Map.of(Remedy.CHOP_COARSE, List.of()))
                        .start()
                        .matter()
                        .pieceCm(),
                1e-9);
        assertEquals(
                6,
                TREATMENT
                        .of(Map.of(Remedy.TURN_FULLY, List.of()))
                        .start()
                        .matter()
                        .pieceCm(),
                1e-9);
    }

    /** Urea is 46 % nitrogen (46-0-0, as sold), and as good as dry. */
    @Test
    @DisplayName("of urea brings its nitrogen, 46 % of it, dissolved")
    void urea() {
        List<Event> all = events(Remedy.ADD_UREA, stuff("urea", 0.4, 2, 7, 9));
        assertEquals(2, all.size());
        Event.Feed second = (Event.Feed) all.get(1);
        assertEquals(0.2 * 0.46, second.nitrogenKg(), 0.003);
        assertEquals(7, second.day());
        assertEquals(9, second.waterKg());
        Event.Feed undissolved = (Event.Feed)
                events(Remedy.ADD_UREA, stuff("urea", 0.4, 1, 0, 0)).get(0);
        assertEquals(1, undissolved.waterKg(), "a litre at least");
    }

    @Test
    @DisplayName("of material mixes in as much of it, as warm as it is where it lies")
    void added() {
        Event.Add add = (Event.Add) events(Remedy.MIX_IN_DRY_CARBON, stuff("straw-general", 12, 1, 0, 0))
                .get(0);
        assertEquals(12, add.matter().dryKg() + add.matter().waterKg(), 1e-6);
        assertEquals(5, add.temperatureC());
        assertTrue(add.mixed());
        assertEquals(
                List.of(), events(Remedy.ADD_GREENS, stuff("straw-general", 0.005, 1, 0, 0)), "crumbs are nothing");
        Event.Add frosty = (Event.Add) new Treatment(PILE, -30)
                .of(Map.of(Remedy.ADD_GREENS, List.of(stuff("straw-general", 12, 1, 0, 0))))
                .events()
                .get(0);
        assertEquals(5, frosty.temperatureC());
        Event.Add leaves = (Event.Add) new Treatment(PILE, -30)
                .of(Map.of(Remedy.ADD_GREENS, List.of(stuff("leaves-mixed", 12, 1, 0, 0))))
                .events()
                .get(0);
        assertEquals(0.5, leaves.temperatureC(), "frozen stuff is not mixed in");
    }

    @Test
    @DisplayName("that the model knows nothing of is not tried")
    void unknown() {
        assertFalse(TREATMENT.canTry(Remedy.COVER_AGAINST_RAIN, List.of()));
    }

    @Test
    @DisplayName("round the pile changes what stands round it")
    void covers() {
        Envelope straw = ((Event.Cover) events(Remedy.INSULATE).get(0)).envelope();
        assertEquals(Surroundings.insulated(PILE.envelope()), straw);
        Envelope calm = ((Event.Cover) events(Remedy.SHELTER_FROM_WIND).get(0)).envelope();
        assertTrue(calm.shelter() > PILE.envelope().shelter());
        PileState shut = PILE.with(PILE.envelope().topped(Layer.sealedSheet()));
        Envelope open = ((Event.Cover) new Treatment(shut, 3)
                        .of(Map.of(Remedy.UNSEAL, List.of()))
                        .events()
                        .get(0))
                .envelope();
        assertTrue(open.topOpen() > shut.envelope().topOpen());
    }

    @Test
    @DisplayName("with another on one day opens the pile once, and turning does what loosening would")
    void inOneGo() {
        Map<Remedy, List<DoseAmount>> steps = new LinkedHashMap<>();
        steps.put(Remedy.LOOSEN_SIDES_AND_TOP, List.of());
        steps.put(Remedy.MIX_IN_DRY_CARBON, List.of(stuff("straw-general", 12, 1, 0, 0)));
        steps.put(Remedy.TURN_FULLY, List.of());
        List<Event> once = TREATMENT.of(steps).events();
        assertEquals(2, once.size(), once.toString());
        assertFalse(((Event.Add) once.get(0)).mixed(), "it lies in the pile before that is turned");
        assertEquals(new Event.Turn(0), once.get(1));
        assertTrue(TREATMENT.opensTwice(steps));
    }

    @Test
    @DisplayName("that loosens stays a loosening beside one that opens nothing")
    void loosenedAndWatered() {
        Map<Remedy, List<DoseAmount>> steps = new LinkedHashMap<>();
        steps.put(Remedy.MAKE_AIR_HOLES, List.of());
        steps.put(Remedy.ADD_WATER, List.of(water(10, 1, 0)));
        assertEquals(
                List.of(new Event.Water(0, 10, 25), new Event.Loosen(0)),
                TREATMENT.of(steps).events());
        assertFalse(TREATMENT.opensTwice(steps));
        Map<Remedy, List<DoseAmount>> mixed = new LinkedHashMap<>();
        mixed.put(Remedy.ADD_WATER, List.of(water(10, 1, 0)));
        mixed.put(Remedy.ADD_GREENS, List.of(stuff("straw-general", 12, 1, 0, 0)));
        assertEquals(new Event.Turn(0), TREATMENT.of(mixed).events().get(2), "what is mixed in is turned in");
    }

    @Test
    @DisplayName("round the pile builds on the one before it")
    void coversTogether() {
        Map<Remedy, List<DoseAmount>> steps = new LinkedHashMap<>();
        steps.put(Remedy.INSULATE, List.of());
        steps.put(Remedy.SHELTER_FROM_WIND, List.of());
        List<Event> both = TREATMENT.of(steps).events();
        Envelope last = ((Event.Cover) both.get(1)).envelope();
        assertEquals(Surroundings.sheltered(Surroundings.insulated(PILE.envelope())), last);
    }
}
