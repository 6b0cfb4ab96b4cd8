package heapwright.process.use;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Limit;
import heapwright.knowledge.RipeReason;
import heapwright.knowledge.Trait;
import heapwright.knowledge.Wait;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Built on 20 August and asked on 2 May. The waits are those of the shipped table: 21, 28, 90 and 180 days. */
@DisplayName("Of the days on which ripening hangs")
class PileDaysTest {

    private static final String OLD = "'asOf': '2027-05-02', 'built': '2026-08-20'";

    private static Pile pile(String head, String... entries) {
        return TestPile.of(head + ", 'recipe': [{'material': 'leaves-mixed', 'amount': 30, 'unit': 'bucket'}], 'log': ["
                + String.join(",", entries) + "]");
    }

    private static PileDays days(String... entries) {
        return of(pile(OLD, entries));
    }

    private static PileDays of(Pile pile) {
        return new PileDays(pile, TestPile.KNOWLEDGE);
    }

    private static String added(String day, String material) {
        return "{'date': '" + day + "', 'added': [{'material': '" + material + "', 'amount': 1, 'unit': 'bucket'}]}";
    }

    private static String core(String day, double celsius) {
        return "{'date': '" + day + "', 'measured': {'core': {'value': " + celsius + ", 'unit': 'C'}}}";
    }

    private static String seen(String day, String sign) {
        return "{'date': '" + day + "', 'seen': ['" + sign + "']}";
    }

    private static LocalDate day(String text) {
        return LocalDate.parse(text);
    }

    private static Optional<LocalDate> some(String text) {
        return Optional.of(day(text));
    }

    private static List<RipeReason> against(Pile pile) {
        PileDays days = of(pile);
        return days.against(TestResults.of(pile, TestPile.KNOWLEDGE, days));
    }

    @Test
    @DisplayName("today and the limits are those of the file, else those of the table")
    void today() {
        assertEquals(day("2027-05-02"), days().today());
        assertEquals(31, days().since(day("2027-04-01")));
        assertEquals(60, days().limit(Limit.AGE_OLD));
        assertEquals(45, of(pile(OLD + ", 'limits': {'age-old': 45}")).limit(Limit.AGE_OLD));
    }

    @Test
    @DisplayName("the last fresh stuff is what rots: not soil, ash or compost, and before any of it the building")
    void lastFresh() {
        assertEquals(day("2026-08-20"), days().lastFresh());
        assertEquals(
                day("2027-03-01"),
                days(
                                added("2027-02-01", "grass-clippings"),
                                added("2027-03-01", "kitchen-scraps"),
                                added("2027-04-01", "soil"),
                                added("2027-04-02", "wood-ash"),
                                added("2027-04-03", "compost-finished"))
                        .lastFresh());
    }

    @Test
    @DisplayName("what comes after the day that is asked about does not count")
    void later() {
        Pile pile = pile(
                OLD,
                added("2027-02-01", "grass-clippings"),
                core("2027-02-03", 50),
                "{'date': '2027-02-05', 'done': ['spread']}",
                added("2027-03-01", "grass-clippings"),
                core("2027-03-03", 50),
                "{'date': '2027-03-05', 'done': ['spread']}");
        PileDays then = of(pile.with(pile.name(), day("2027-02-20"), pile.recipe(), pile.log()));
        assertEquals(day("2027-02-01"), then.lastFresh());
        assertEquals(some("2027-02-03"), then.lastHeat());
        assertEquals(some("2027-02-05"), then.spreadOn());
        assertEquals(some("2027-03-03"), of(pile).lastHeat());
        assertEquals(some("2027-03-05"), of(pile).spreadOn());
        assertEquals(Optional.empty(), days(core("2027-03-03", 30)).spreadOn());
    }

    /** A recipe may tell the day of each thing. */
    @Test
    @DisplayName("nor does what goes in by the recipe only later")
    void laterByTheRecipe() {
        Pile pile = TestPile.of(OLD + ", 'recipe': [{'material': 'leaves-mixed', 'amount': 30, 'unit': 'bucket'},"
                + " {'material': 'grass-clippings', 'amount': 5, 'unit': 'bucket', 'date': '2026-09-10'}]");
        assertEquals(day("2026-09-10"), of(pile).lastFresh());
        Pile then = pile.with(pile.name(), day("2026-09-01"), pile.recipe(), pile.log());
        assertEquals(day("2026-08-20"), of(then).lastFresh());
    }

    @Test
    @DisplayName("a trait is looked for in all that went in")
    void traits() {
        PileDays days = days(added("2027-02-01", "wood-ash"), added("2027-03-01", "kitchen-scraps"));
        assertEquals(some("2027-02-01"), days.last(EnumSet.of(Trait.ALKALI, Trait.SALTED)));
        assertEquals(Optional.empty(), days.last(EnumSet.of(Trait.SALTED)));
    }

    /** 28 days (OSUEXT). */
    @ParameterizedTest
    @CsvSource({"2027-04-20, 2027-05-18", "2027-04-05, 2027-05-03", "2027-04-04, "})
    @DisplayName("a wait for some material ends so many days after it went in, and is told while that lies ahead")
    void ends(String in, LocalDate end) {
        String own = ", 'materials': [{'id': 'my-nut', 'like': 'walnut-black-leaves'}, {'id': 'my-leaves', 'like':"
                + " 'leaves-mixed'}]";
        for (String material : List.of("walnut-black-leaves", "my-nut")) {
            PileDays days = of(pile(
                    OLD + own, added("2027-01-05", material), added(in, material), added("2027-04-30", "my-leaves")));
            assertEquals(some(in), days.last(days.wait(Wait.WALNUT_LEAVES)), material);
            assertEquals(Optional.ofNullable(end), days.ends(Wait.WALNUT_LEAVES), material);
            assertEquals(Optional.empty(), days.ends(Wait.WALNUT_WOOD), material);
        }
    }

    @Test
    @DisplayName("heat is a core of 40 °C or a hand that felt it, the last of them")
    void heat() {
        assertEquals(Optional.empty(), days(core("2027-03-01", 39.9)).lastHeat());
        assertEquals(
                some("2027-03-01"),
                days(core("2027-03-01", 40), core("2027-03-09", 39.9)).lastHeat());
        assertEquals(
                some("2027-03-09"),
                days(core("2027-03-01", 50), seen("2027-03-09", "core-warm")).lastHeat());
        assertEquals(
                Optional.empty(), days(seen("2027-03-09", "heated-then-cooled")).lastHeat(), "nobody says when");
    }

    /** Three weeks after the heat (CCME05), three months after the last fresh stuff where it never was hot (COMPINFO). */
    @Test
    @DisplayName("its rest is over three weeks after the heat, or three months after the last fresh stuff")
    void curing() {
        assertEquals(some("2027-05-11"), days(core("2027-04-20", 55)).curingEnds());
        assertEquals(some("2027-05-03"), days(core("2027-04-12", 55)).curingEnds());
        assertEquals(Optional.empty(), days(core("2027-04-11", 55)).curingEnds(), "today");
        assertEquals(
                some("2027-05-30"), days(added("2027-03-01", "kitchen-scraps")).curingEnds());
        assertEquals(Optional.empty(), days().curingEnds());
        assertEquals(
                Optional.empty(),
                days(added("2027-03-01", "kitchen-scraps"), seen("2027-03-09", "heated-then-cooled"))
                        .curingEnds(),
                "it was hot, and nobody knows until when");
    }

    /** 60 days (CORNFAQ). */
    @Test
    @DisplayName("it is too young for two months from the day of building, where that is known")
    void young() {
        assertTrue(of(pile("'asOf': '2027-05-02', 'built': '2027-03-04'")).tooYoung());
        assertFalse(of(pile("'asOf': '2027-05-02', 'built': '2027-03-03'")).tooYoung());
        assertFalse(
                of(pile("'asOf': '2027-05-02'", core("2027-05-02", 20))).tooYoung(), "when it was built is not told");
    }

    @Test
    @DisplayName("what speaks against using it is told once each: age before fresh stuff, rest, tests")
    void reasons() {
        assertEquals(List.of(), against(pile(OLD)));
        assertEquals(
                List.of(RipeReason.TOO_YOUNG, RipeReason.NEVER_HOT),
                against(pile("'asOf': '2027-05-02', 'built': '2027-03-20'", added("2027-04-10", "kitchen-scraps"))));
        assertEquals(
                List.of(RipeReason.FRESH_STUFF, RipeReason.NEVER_HOT),
                against(pile(OLD, added("2027-04-05", "kitchen-scraps"))),
                "27 days ago");
        assertEquals(
                List.of(RipeReason.NEVER_HOT), against(pile(OLD, added("2027-04-04", "kitchen-scraps"))), "28 days");
        assertEquals(List.of(RipeReason.STILL_CURING), against(pile(OLD, core("2027-04-20", 55))));
        assertEquals(
                List.of(RipeReason.FAILED_TEST),
                against(pile(OLD, "{'date': '2027-05-01', 'tested': [{'test': 'bag', 'result': 'poor'}]}")));
    }
}
