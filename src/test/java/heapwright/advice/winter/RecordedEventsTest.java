package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.fact.Reads;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import heapwright.process.heat.Bounds;
import heapwright.process.heat.CoreReading;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Weather;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Built on 10 October, looked at 42 days later. */
@DisplayName("To the model a record")
class RecordedEventsTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final PileState START =
            PileState.cube(Matter.of(1.5, 500, 0.6, 0.2, 0.3, 0.1, 30, 5), 12, Envelope.slatted());

    private static RecordedEvents of(String log, String more) {
        Pile pile = TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-21', 'log': [" + log + "]" + more);
        return new RecordedEvents(pile, WinterPiles.materials(pile), START, Weather.constant(-20, 50));
    }

    private static RecordedEvents of(String log) {
        return of(log, "");
    }

    private static String done(String date, String actions) {
        return "{'date': '" + date + "', 'done': [" + actions + "]}";
    }

    private static String core(String date, double celsius) {
        return "{'date': '" + date + "', 'measured': {'core': {'value': " + celsius + ", 'unit': 'C'}}}";
    }

    private static List<Event> events(String log) {
        return of(log).events(Set.of());
    }

    @Test
    @DisplayName("tells what was done on which day")
    void done() {
        assertEquals(List.of(new Event.Turn(20)), events(done("2026-10-30", "'turned-fully'")));
        assertEquals(List.of(new Event.Turn(0)), events(done("2026-10-10", "'moved'")));
        assertEquals(List.of(new Event.Loosen(42)), events(done("2026-11-21", "'loosened'")));
        assertEquals(List.of(new Event.Loosen(1)), events(done("2026-10-11", "'holes-made'")));
        assertEquals(
                List.of(new Event.Water(2, 20 * 1.5, 10)),
                events(done("2026-10-12", "'watered'")),
                "twenty litres to the cubic metre from the tap");
        assertEquals(List.of(), events(done("2026-10-12", "'uncovered', 'split', 'drained'")));
    }

    @Test
    @DisplayName("waters with what was poured on, told in litres, and not with the usual can besides")
    void poured() {
        String water = "'added': [{'material': 'water', 'amount': 30, 'unit': 'L'}]";
        assertEquals(List.of(new Event.Water(10, 30, 10)), events("{'date': '2026-10-20', " + water + "}"));
        assertEquals(
                List.of(new Event.Water(10, 30, 10)),
                events("{'date': '2026-10-20', 'done': ['watered'], " + water + "}"));
        assertEquals(
                List.of(new Event.Water(9, 30, 10), new Event.Water(10, 30, 10)),
                events(done("2026-10-19", "'watered'") + ",{'date': '2026-10-20', " + water + "}"));
        List<Event> both = events("{'date': '2026-10-20', 'added': [{'material': 'grass-clippings', 'amount': 20,"
                + " 'unit': 'kg'}, {'material': 'water', 'amount': 30, 'unit': 'L'}]}");
        assertEquals(new Event.Water(10, 30, 10), both.get(0));
        Event.Add grass = (Event.Add) both.get(1);
        assertEquals(20, grass.matter().dryKg() + grass.matter().waterKg(), 1e-9);
    }

    @Test
    @DisplayName("covers and insulates once, not on top of what was there when it was built")
    void covered() {
        Event.Cover covered =
                (Event.Cover) events(done("2026-10-12", "'covered'")).get(0);
        assertEquals(2, covered.day());
        assertTrue(covered.envelope().rainShare() < START.envelope().rainShare());
        Event.Cover insulated =
                (Event.Cover) events(done("2026-10-12", "'insulated'")).get(0);
        assertTrue(insulated.envelope().sideResistance() > START.envelope().sideResistance());
        assertEquals(
                List.of(),
                of(
                                done("2026-10-12", "'covered', 'insulated'"),
                                ", 'container': {'cover': 'lid', 'insulation': 'straw'}")
                        .events(Set.of()));
        assertEquals(
                2,
                of(
                                done("2026-10-12", "'covered', 'insulated'"),
                                ", 'container': {'cover': 'none', 'insulation': 'none'}")
                        .events(Set.of())
                        .size());
    }

    @Test
    @DisplayName("adds what was added, mixed through where it was turned that day, and thawed")
    void added() {
        String grass = "'added': [{'material': 'grass-clippings', 'amount': 20, 'unit': 'kg'}]";
        Event.Add laid =
                (Event.Add) events("{'date': '2026-10-20', " + grass + "}").get(0);
        assertEquals(10, laid.day());
        assertEquals(false, laid.mixed());
        assertEquals(0.5, laid.temperatureC());
        assertEquals(20, laid.matter().dryKg() + laid.matter().waterKg(), 1e-9);
        List<Event> turned = events("{'date': '2026-10-20', 'done': ['turned-fully'], " + grass + "}");
        assertTrue(((Event.Add) turned.get(1)).mixed());
        List<Event> other = events(done("2026-10-19", "'turned-fully'") + ",{'date': '2026-10-20', " + grass + "}");
        assertEquals(false, ((Event.Add) other.get(1)).mixed());
        assertEquals(1, events("{'date': '2026-10-10', " + grass + "}").size(), "also on the first day");
        String dated = ", 'recipe': [{'material': 'leaves-mixed', 'amount': 50, 'unit': 'kg'},"
                + "{'material': 'grass-clippings', 'amount': 20, 'unit': 'kg', 'date': '2026-10-13'}]";
        List<Event> later = of("", dated).events(Set.of());
        assertEquals(1, later.size(), "what went in by the recipe on the first day is the pile itself");
        assertEquals(3, later.get(0).day());
    }

    @Test
    @DisplayName("opened often is opened every three days, unless it tells so itself")
    void often() {
        List<Event> opened = of("").events(Set.of(Sign.OPENED_OFTEN));
        assertEquals(14, opened.size());
        assertEquals(new Event.Turn(3), opened.get(0));
        assertEquals(new Event.Turn(42), opened.get(13));
        String three = done("2026-10-12", "'opened'") + "," + done("2026-10-20", "'opened'") + ","
                + done("2026-10-30", "'opened'");
        assertEquals(3, of(three).events(Set.of(Sign.OPENED_OFTEN)).size());
        assertEquals(
                16,
                of(three.substring(0, three.lastIndexOf(",{")))
                        .events(Set.of(Sign.OPENED_OFTEN))
                        .size());
    }

    @Test
    @DisplayName("keeps the last temperature of a day, within what a pile can have")
    void cores() {
        assertEquals(
                List.of(new CoreReading(10, 30), new CoreReading(20, 79)),
                of(core("2026-10-20", 25) + "," + core("2026-10-20", 30) + "," + core("2026-10-30", 95))
                        .cores());
    }

    private static String wet(String date, double moisture) {
        return "{'date': '" + date + "', 'measured': {'moisture': {'value': " + moisture + ", 'unit': '%'}}}";
    }

    @Test
    @DisplayName(
            "of water counts from the start, or from the day after the pile was last hot, and stands on its own day")
    void water() {
        assertEquals(
                List.of(wetOn(0, 0.7), wetOn(20, 0.7)),
                of(wet("2026-10-30", 70)).marks(List.of(), Set.of()));
        assertEquals(
                List.of(wetOn(6, 0.7), wetOn(20, 0.7)),
                of(core("2026-10-15", 40) + "," + wet("2026-10-30", 70)).marks(List.of(), Set.of()));
        assertEquals(
                List.of(wetOn(0, 0.7), wetOn(20, 0.7)),
                of(core("2026-10-15", 39) + "," + wet("2026-10-30", 70)).marks(List.of(), Set.of()));
        assertEquals(
                List.of(wetOn(0, 0.7), wetOn(10, 0.7), wetOn(11, 0.6), wetOn(20, 0.6)),
                of(wet("2026-10-20", 70) + "," + wet("2026-10-30", 60)).marks(List.of(), Set.of()));
    }

    private static StateMark wetOn(int day, double share) {
        return new StateMark(day, OptionalDouble.of(share), NONE);
    }

    private static StateMark sourOn(int day) {
        return new StateMark(day, NONE, OptionalDouble.of(0.55));
    }

    /** pH 7.4 is no acid and 4.4 all of it; a sour smell is pH 5.7 at least. */
    @Test
    @DisplayName("of acid is read from the pH, else from the nose")
    void acid() {
        StateMark mark = of("{'date': '2026-10-30', 'measured': {'ph': {'value': 5.9, 'unit': 'pH'}}}")
                .marks(List.of(), Set.of(Sign.SMELLS_SOUR))
                .get(0);
        assertEquals(0.5, mark.acidIndex().orElseThrow(), 1e-9);
        assertEquals(
                List.of(sourOn(0), sourOn(42)),
                of("").marks(List.of(), Set.of(Sign.SMELLS_SOUR)),
                "on the day on which it was smelt as on the first");
        assertEquals(
                List.of(sourOn(21), sourOn(42)),
                of("").marks(List.of(), Set.of(Sign.SMELLS_SOUR, Sign.HEATED_THEN_COOLED)),
                "what is sour now was not yet sour while it was warm");
        assertEquals(List.of(), of("").marks(List.of(), Set.of()));
    }

    /** The page says pH 6 or less, and under 6.5 (docs/method/winter.md): a figure of the file that is just so counts so. */
    @ParameterizedTest
    @CsvSource({"5.9, ACID, true", "6.0, ACID, true", "6.1, UNKNOWN, true", "6.4, UNKNOWN, true", "6.5, UNKNOWN, false"
    })
    @DisplayName("of acid counts as sour up to a measured pH of 6, and is named under 6.5")
    void measuredSour(double ph, Factor by, boolean named) {
        List<StateMark> marks = of("{'date': '2026-10-30', 'measured': {'ph': {'value': " + ph + ", 'unit': 'pH'}}}")
                .marks(List.of(), Set.of());
        assertEquals(by, RecordedFaults.by(marks));
        assertEquals(named, RecordedFaults.seen(marks).contains(Factor.ACID));
    }

    @Test
    @DisplayName(
            "takes of the hand's word the inner half, for six weeks back and the first day, and a measured moisture before it")
    void hand() {
        Reads felt = new Reads(Reading.MOISTURE, 65, 70, 75, Reads.Basis.REPORTED);
        Reads worked = new Reads(Reading.MOISTURE, 65, 70, 75, Reads.Basis.ESTIMATED);
        List<StateMark> marks = of("").marks(List.of(felt), Set.of());
        assertEquals(
                Set.of(0, 7, 14, 21, 28, 35, 42),
                marks.stream().map(StateMark::day).collect(Collectors.toSet()));
        marks.forEach(
                m -> assertEquals(Bounds.moisture(0.675, 0.725), m.bounds().orElseThrow()));
        assertEquals(List.of(), of("").marks(List.of(worked), Set.of()));
        assertEquals(
                List.of(wetOn(0, 0.5), wetOn(20, 0.5)),
                of(wet("2026-10-30", 50)).marks(List.of(felt), Set.of()),
                "a scale beats the hand");
        assertEquals(
                Set.of(21, 28, 35, 42),
                of("").marks(List.of(felt), Set.of(Sign.HEATED_THEN_COOLED)).stream()
                        .map(StateMark::day)
                        .collect(Collectors.toSet()),
                "not while it was warm");
        assertEquals(
                List.of(StateMark.noticed(0, Bounds.moisture(0, 0.33))),
                of("").marks(List.of(felt), Set.of(Sign.DRY_UNDER_DAMP_SKIN)));
    }

    @Test
    @DisplayName("is short of air where it smells foul, is slimy or matted, since it was last warm")
    void airless() {
        StateMark first = StateMark.noticed(0, Bounds.reach(0.25));
        StateMark today = StateMark.noticed(42, Bounds.reach(0.25));
        for (Sign sign : Set.of(Sign.SMELLS_PUTRID, Sign.SLIMY, Sign.MATTED_LEAVES)) {
            assertEquals(List.of(first, today), of("").marks(List.of(), Set.of(sign)));
        }
        assertEquals(
                List.of(StateMark.noticed(11, Bounds.reach(0.25)), today),
                of(core("2026-10-20", 55)).marks(List.of(), Set.of(Sign.SMELLS_PUTRID)));
        assertEquals(List.of(), of("").marks(List.of(), Set.of(Sign.SMELLS_EARTHY)));
    }

    @Test
    @DisplayName("has rotted down where it is dark and crumbly, unless something else speaks against it")
    void rottedDown() {
        assertEquals(
                List.of(StateMark.noticed(42, Bounds.rottedDown())),
                of("").marks(List.of(), Set.of(Sign.DARK_CRUMBLY)));
        assertEquals(List.of(), of("").marks(List.of(), Set.of(Sign.DARK_CRUMBLY, Sign.ORIGINALS_VISIBLE)));
        assertEquals(List.of(), of("").marks(List.of(), Set.of(Sign.DARK_CRUMBLY, Sign.CORE_WARM)));
    }
}
