package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.climate.LocalYear;
import heapwright.process.heat.CoreReading;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Weather;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On both sides of each edge that docs/method/winter.md states. */
@DisplayName("The word for a pile's past")
class VerdictTest {

    private static final Matter GOOD = Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 30, 4);

    private static PileModel model(
            Matter matter, double air, int age, List<CoreReading> cores, List<StateMark> marks, List<Event> events) {
        return new PileModel(
                WinterPiles.good(""),
                PileState.cube(matter, 12, Envelope.slatted()),
                new Climate(LocalYear.Known.MONTHS, -9, Weather.constant(air, age + 61)),
                events,
                cores,
                marks,
                age,
                60,
                Warmth.unknown(),
                false,
                WarmOnce.UNTOLD);
    }

    private static Story story(double air, int age, CoreReading... cores) {
        return Story.of(model(GOOD, air, age, List.of(cores), List.of(), List.of()));
    }

    private static CoreReading core(int day, double celsius) {
        return new CoreReading(day, celsius);
    }

    @ParameterizedTest(name = "outdoors {0} °C, core {1} °C: {2}")
    @CsvSource({
        "5, 20, WORKING",
        "5, 19.9, SOMETHING_WRONG",
        "30, 40, WORKING",
        "30, 39.9, SOMETHING_WRONG",
        "-12, 3, WORKING",
        "-12, 2.9, JUST_WINTER"
    })
    @DisplayName("is that it works from 40 °C or 15 K above outdoors")
    void warm(double air, double celsius, Verdict verdict) {
        assertEquals(verdict, story(air, 12, core(12, celsius)).verdict());
    }

    @Test
    @DisplayName("is that something is wrong from 3 K below the healthy band")
    void shortfall() {
        Story any = story(8, 12, core(12, 5));
        double low = any.healthy().low()[12];
        assertTrue(low > 20, "a healthy pile would be warm: " + low);
        assertEquals(low - 5, any.shortfallC(), 1e-9);
        assertEquals(Verdict.SOMETHING_WRONG, any.verdict());
        Story cold = story(-12, 150, core(150, -6));
        double edge = cold.healthy().low()[150];
        assertEquals(
                Verdict.SOMETHING_WRONG, story(-12, 150, core(150, edge - 3.01)).verdict());
        assertEquals(
                Verdict.JUST_WINTER, story(-12, 150, core(150, edge - 2.99)).verdict());
        assertEquals(0, story(-12, 150, core(150, edge + 1)).shortfallC());
    }

    @Test
    @DisplayName("is that it is too early up to the fourth day")
    void early() {
        double low = story(12, 4, core(0, 12)).healthy().low()[0];
        assertEquals(Verdict.TOO_EARLY, story(12, 4, core(0, low)).verdict());
        assertTrue(story(12, 5, core(0, low)).verdict() != Verdict.TOO_EARLY);
    }

    @Test
    @DisplayName("is winter only below 10 °C outdoors")
    void winter() {
        double low = story(9.9, 5, core(0, 12)).healthy().low()[0];
        assertEquals(Verdict.JUST_WINTER, story(9.9, 5, core(0, low)).verdict());
        assertEquals(Verdict.WORKING, story(10, 5, core(0, low)).verdict());
        Matter dry = Matter.of(1, 300, 0.30, 0.25, 0.40, 0.25, 30, 4);
        double least = Story.of(model(dry, 12, 5, List.of(core(0, 12)), List.of(), List.of()))
                .healthy()
                .low()[0];
        Story slow = Story.of(model(dry, 12, 5, List.of(core(0, least)), List.of(), List.of()));
        assertTrue(slow.shortfallC() < 3, "short by " + slow.shortfallC());
        assertEquals(Verdict.SOMETHING_WRONG, slow.verdict(), "what can be mended is wrong before it shows");
    }

    @Test
    @DisplayName("is that it is finished where its food is spent, after two months at the earliest")
    void finished() {
        Matter spent = Matter.of(0.5, 600, 0.5, 0.0, 0.12, 0.45, 14, 2).withAcid(0);
        Story old = Story.of(model(spent, 18, 60, List.of(core(59, 19)), List.of(), List.of()));
        assertEquals(Verdict.FINISHED, old.verdict());
        assertEquals(Factor.FOOD, old.factor());
        Story young = Story.of(model(spent, 18, 59, List.of(core(58, 19)), List.of(), List.of()));
        assertTrue(young.verdict() != Verdict.FINISHED);
    }

    @Test
    @DisplayName("is told by the reading furthest below the band since it was last hot")
    void telling() {
        Story story = story(0, 20, core(4, 8), core(9, 12), core(14, 6), core(20, 15));
        CoreReading told = story.telling();
        for (CoreReading reading : story.model().cores()) {
            assertTrue(
                    story.healthy().low()[told.day()] - told.celsius()
                            >= story.healthy().low()[reading.day()] - reading.celsius(),
                    reading + " is further below than " + told);
        }
        Story since = story(0, 20, core(4, 8), core(9, 40), core(14, 30), core(20, 31));
        assertTrue(since.telling().day() >= 14, "what was before the heat does not count: " + since.telling());
        Story before = story(0, 20, core(4, 8), core(9, 39.9), core(14, 45), core(20, 55));
        assertEquals(20, before.telling().day(), "hot again");
        Story warm = story(0, 20, core(4, -5), core(9, 39.9), core(20, 39));
        assertEquals(4, warm.telling().day());
    }

    @Test
    @DisplayName("names the water that a dry recipe lacks and the air that a soaked one lacks")
    void factors() {
        Matter dry = Matter.of(1, 300, 0.30, 0.25, 0.40, 0.25, 30, 4);
        assertEquals(Factor.WATER, wrong(dry, List.of(), List.of()).factor());
        Matter starved = Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 200, 4);
        assertEquals(Factor.NITROGEN, wrong(starved, List.of(), List.of()).factor());
        Matter coarse = GOOD.withPieces(40);
        assertEquals(Factor.PIECES, wrong(coarse, List.of(), List.of()).factor());
    }

    private static Story wrong(Matter matter, List<StateMark> marks, List<Event> events) {
        Story story = Story.of(
                model(matter, 2, 16, List.of(core(4, 8), core(8, 6), core(12, 5), core(16, 5)), marks, events));
        assertEquals(Verdict.SOMETHING_WRONG, story.verdict());
        return story;
    }

    @Test
    @DisplayName("names what held it back since it stalled, not what did before")
    void since() {
        StateMark soaked = new StateMark(16, OptionalDouble.of(0.80), OptionalDouble.empty());
        Matter dryish = Matter.of(1, 400, 0.44, 0.25, 0.40, 0.25, 30, 4);
        Story story = Story.of(model(
                dryish,
                5,
                30,
                List.of(core(5, 45), core(10, 48), core(15, 45), core(20, 12), core(25, 8), core(30, 7)),
                List.of(soaked),
                List.of()));
        assertEquals(Verdict.SOMETHING_WRONG, story.verdict());
        int stalled = story.stalledOn().orElseThrow();
        assertTrue(stalled > 15 && stalled <= 20, "stalled on " + stalled);
        assertEquals(Factor.AIR, story.factor());
    }

    @Test
    @DisplayName("names what would have helped against the frost on a pile that is only cold")
    void frost() {
        double low = story(-12, 150, core(150, -6)).healthy().low()[150];
        assertEquals(Factor.SHELTER, story(-12, 150, core(150, low)).factor());
    }

    private static List<Event> turns(int... days) {
        return IntStream.of(days).mapToObj(d -> (Event) new Event.Turn(d)).toList();
    }

    @Test
    @DisplayName("names the opening where it was opened three times or more, every four days")
    void opened() {
        assertEquals(Factor.HANDLING, wrong(GOOD, List.of(), turns(2, 6, 14)).factor(), "3 times in 12 days");
        assertTrue(wrong(GOOD, List.of(), turns(2, 6, 15)).factor() != Factor.HANDLING, "3 times in 13 days");
        assertTrue(wrong(GOOD, List.of(), turns(2, 6)).factor() != Factor.HANDLING, "twice");
        assertTrue(wrong(GOOD, List.of(), turns(2, 2, 6)).factor() != Factor.HANDLING, "twice, once of it double");
        assertEquals(
                Factor.HANDLING,
                wrong(GOOD, List.of(), List.of(new Event.Loosen(3), new Event.Turn(9), new Event.Loosen(6)))
                        .factor());
        Event water = new Event.Water(5, 1, 10);
        assertTrue(wrong(GOOD, List.of(), List.of(water, new Event.Turn(2), new Event.Turn(6)))
                        .factor()
                != Factor.HANDLING);
    }

    @Test
    @DisplayName("does not know what held back a pile that its recipe and marks call well")
    void unknown() {
        assertEquals(Factor.UNKNOWN, wrong(GOOD, List.of(), List.of()).factor());
        StateMark well = new StateMark(16, OptionalDouble.of(0.58), OptionalDouble.of(0.2));
        assertEquals(Factor.UNKNOWN, wrong(GOOD, List.of(well), List.of()).factor());
    }

    /** A mark of today's, which cannot have held it back in the reckoning, still says what it was. */
    @ParameterizedTest
    @CsvSource({"0.66, AIR", "0.659, UNKNOWN", "0.42, WATER", "0.421, UNKNOWN"})
    @DisplayName("names what was felt of its water where the recipe does not explain it")
    void marked(double moisture, Factor factor) {
        StateMark mark = new StateMark(16, OptionalDouble.of(moisture), OptionalDouble.empty());
        assertEquals(factor, wrong(GOOD, List.of(mark), List.of()).factor());
    }

    @ParameterizedTest
    @CsvSource({"0.47, ACID", "0.46, UNKNOWN"})
    @DisplayName("names what was felt of its acid where the recipe does not explain it")
    void sour(double acid, Factor factor) {
        StateMark mark = new StateMark(16, OptionalDouble.empty(), OptionalDouble.of(acid));
        assertEquals(factor, wrong(GOOD, List.of(mark), List.of()).factor());
    }
}
