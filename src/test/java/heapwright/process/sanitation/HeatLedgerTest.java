package heapwright.process.sanitation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Survivor;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The heat ledger")
class HeatLedgerTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);

    @ParameterizedTest
    @DisplayName("judges a core by each rule as its text has it, just enough and a day short")
    @CsvSource({
        // 40 CFR 257 appendix II, windrow: 55 °C, 15 days, five turns (published)
        "us-windrow, 55, 15, 5, CORE_ONLY",
        "us-windrow, 55, 14, 5, SHORT",
        "us-windrow, 55, 15, 4, SHORT",
        "us-windrow, 54, 30, 9, SHORT",
        // 7 CFR 205.203(c)(2), windrow (quoted)
        "us-organic, 55, 15, 5, CORE_ONLY",
        "us-organic, 55, 14, 5, SHORT",
        // Bioabfallverordnung annex 2: 55 °C two weeks, 60 °C six days, 65 °C three days (published)
        "germany, 55, 14, 0, CORE_ONLY",
        "germany, 55, 13, 0, SHORT",
        "germany, 60, 6, 0, CORE_ONLY",
        "germany, 60, 5, 0, SHORT",
        "germany, 65, 3, 0, CORE_ONLY",
        "germany, 65, 2, 0, SHORT",
        // the older text asked a week at 65 °C (published)
        "germany-older, 65, 6, 0, SHORT",
        "germany-older, 65, 7, 0, CORE_ONLY",
        // (EU) 2019/1009 CMC 3: 70 °C 3 days, 65 °C 5, 60 °C 7, 55 °C 14 (from memory)
        "eu, 70, 3, 1, CORE_ONLY",
        "eu, 65, 4, 1, SHORT",
        "eu, 60, 7, 1, CORE_ONLY",
        "eu, 55, 14, 0, SHORT",
        // PAS 100: 65 °C, seven days, two turns (from memory)
        "uk-pas-100, 65, 7, 2, CORE_ONLY",
        "uk-pas-100, 65, 7, 1, SHORT",
        "uk-pas-100, 64, 20, 5, SHORT",
        // EPPO PM 3/66: 55 °C two weeks or 65 °C one (from memory)
        "eppo, 65, 7, 0, CORE_ONLY",
        "eppo, 55, 13, 0, SHORT",
        // SI 2006/1293, housed windrow: 60 °C, eight days, three turns (published)
        "wales-windrow, 60, 9, 3, CORE_ONLY",
        "wales-windrow, 60, 7, 3, SHORT",
        // Feachem 1983: 46 °C for a week, 43 °C for a month (from memory)
        "germs-zone, 46, 7, 0, CORE_ONLY",
        "germs-zone, 43, 29, 0, SHORT",
        // a vessel is none of an open heap's
        "us-vessel, 60, 30, 9, OTHER_METHOD"
    })
    void rules(String rule, double celsius, int days, int turns, RuleCheck.Verdict verdict) {
        HeatLedger ledger = ledger(hot(celsius, days, turns));
        assertEquals(
                verdict,
                ledger.rules().stream()
                        .filter(r -> r.rule().id().equals(rule))
                        .findFirst()
                        .orElseThrow()
                        .verdict());
    }

    @Test
    @DisplayName("counts for Wales no turn within two days of the one before (SI 2006/1293, published)")
    void apart() {
        // Three turns on three days on end count as two.
        StringJoiner log = new StringJoiner(",");
        for (int day = 0; day < 10; day++) {
            log.add(entry(day, 62, day >= 3 && day <= 5));
        }
        assertEquals(RuleCheck.Verdict.SHORT, verdict(ledger(log.toString()), "wales-windrow"));
    }

    @Test
    @DisplayName("wants for AS 4454 three hot days before each turn (from memory)")
    void before() {
        assertEquals(RuleCheck.Verdict.CORE_ONLY, verdict(ledger(turnedEach(3)), "australia"));
        assertEquals(RuleCheck.Verdict.SHORT, verdict(ledger(turnedEach(1)), "australia"));
    }

    @Test
    @DisplayName("lets only the produce rule take days that are not in a row (21 CFR 112.54, from memory)")
    void inARow() {
        StringJoiner log = new StringJoiner(",");
        for (int day = 0; day < 20; day++) {
            log.add(entry(day, day == 9 ? 50 : 57, day % 3 == 1));
        }
        HeatLedger ledger = ledger(log.toString());
        assertEquals(RuleCheck.Verdict.CORE_ONLY, verdict(ledger, "us-produce"));
        assertEquals(RuleCheck.Verdict.SHORT, verdict(ledger, "us-windrow"));
        assertFalse(ledger.hotEnoughInCore());
    }

    @Test
    @DisplayName("says nothing where the core was never measured")
    void unmeasured() {
        HeatLedger ledger = ledger("{'date': '2026-03-01', 'seen': ['core-hot']}");
        assertEquals(RuleCheck.Verdict.NOT_MEASURED, verdict(ledger, "us-windrow"));
        assertEquals(List.of(), ledger.between());
        assertEquals(Fate.Verdict.NOT_REACHED, fate(ledger, "annual-weed-seed"));
    }

    @Test
    @DisplayName("parts the days by the turns")
    void between() {
        HeatLedger ledger = ledger(turnedEach(3));
        assertEquals(
                List.of(3, 3, 3, 3, 3),
                ledger.between().stream().map(b -> b.days().get(0)).toList());
    }

    @ParameterizedTest
    @DisplayName("never clears what came alive through heat, however hot and long")
    @ValueSource(
            strings = {
                // NOBLE04, published in part: three weeks above 62 °C
                "clubroot",
                "fusarium-wilt",
                "charcoal-rot",
                // STEIN12, published: 60 to 65 °C for 12 days
                "potato-wart",
                // STEIN07, published: above 65 °C for 21 days
                "potato-ring-rot",
                // UCIPM, published: do not compost
                "onion-white-rot",
                // THOM97, published in part: 16 days at 56 °C
                "dock-seed",
                // GREENWEEDS, published in part: 8 % after 136 h above 55 °C
                "hard-seed",
                // EGHLES00, published in part: 14 % after four months
                "velvetleaf"
            })
    void outlives(String id) {
        assertEquals(Fate.Verdict.OUTLIVES, fate(ledger(hot(75, 60, 20)), id));
    }

    @ParameterizedTest
    @DisplayName("takes for killed only what the trial's heat and days have killed")
    @CsvSource({
        // TOMPKINS98, published in part: 3.5 % alive after two weeks at 55 to 65 °C, none after four
        "annual-weed-seed, 55, 28, 0, REACHED_IN_CORE",
        "annual-weed-seed, 55, 14, 0, NOT_REACHED",
        "annual-weed-seed, 54, 60, 9, NOT_REACHED",
        // NOBLE04, published in part: 64 to 70 °C for 21 days
        "most-fungi, 64, 21, 0, REACHED_IN_CORE",
        "most-fungi, 64, 20, 0, NOT_REACHED",
        "other-nematodes, 64, 21, 0, REACHED_IN_CORE",
        // STEIN12, published: cysts dead after 7 days at 50 to 55 °C; the upper is asked
        "potato-cyst-nematode, 55, 7, 0, REACHED_IN_CORE",
        "potato-cyst-nematode, 52, 7, 0, NOT_REACHED",
        // NOBLE04, published in part: above 68 °C for more than 20 days; 4 days in GHALY06 do not count
        "tobacco-mosaic, 68, 21, 0, REACHED_IN_CORE",
        "tobacco-mosaic, 65, 4, 0, NOT_REACHED",
        // BERRY13, published in part: static tops kept their germs
        "manure-germs, 60, 30, 0, NOT_REACHED",
        "manure-germs, 55, 15, 5, REACHED_IN_CORE",
        // DELNY, published: 55 to 63 °C for three days, through a turned cycle
        "knotweed, 60, 3, 0, NOT_REACHED",
        // GREENWEEDS, published in part: pieces of bermudagrass alive after eight days at the cool edge, so turns are
        // asked
        "creeping-roots, 60, 30, 0, NOT_REACHED",
        "creeping-roots, 55, 15, 4, NOT_REACHED",
        "creeping-roots, 55, 15, 5, REACHED_IN_CORE"
    })
    void killed(String id, double celsius, int days, int turns, Fate.Verdict verdict) {
        assertEquals(verdict, fate(ledger(hot(celsius, days, turns)), id));
    }

    @Test
    @DisplayName(
            "bids keep out for good what must never be composted at home (sanitation sources, judgement where none)")
    void never() {
        Set<String> never = Set.of(
                "clubroot",
                "onion-white-rot",
                "potato-wart",
                "potato-ring-rot",
                "potato-brown-rot",
                "fusarium-wilt",
                "other-wilts",
                "honey-fungus",
                "knotweed");
        never.forEach(id ->
                assertTrue(TestPile.KNOWLEDGE.sanitation().survivors().get(id).neverCompost(), id));
        TestPile.KNOWLEDGE.sanitation().survivors().values().stream()
                .filter(Survivor::notifiable)
                .forEach(
                        s -> assertTrue(s.then().contains("locally") || s.then().contains("reported"), s.id()));
    }

    @Test
    @DisplayName("finds by material and by sign what may be in this pile")
    void inThisPile() {
        Pile pile = TestPile.of("'asOf': '2026-03-20', 'built': '2026-02-20', "
                + "'recipe': [{'material': 'brassicas-clubroot', 'amount': 10, 'unit': 'L'}], "
                + "'log': [{'date': '2026-03-01', 'seen': ['much-manure']}]");
        assertEquals(
                List.of("clubroot", "manure-germs"),
                HeatLedger.of(pile, TestPile.KNOWLEDGE).inThisPile().stream()
                        .map(f -> f.survivor().id())
                        .toList());
    }

    @Test
    @DisplayName(
            "looks for what may be in it under own materials and what was added, never under an own material that is not in it")
    void inOwnAndAdded() {
        Pile pile = TestPile.of("'asOf': '2026-03-20', 'built': '2026-02-20', "
                + "'materials': [{'id': 'our-sprouts', 'name': 'Our sprouts', 'like': 'brassicas-clubroot'}, "
                + "{'id': 'unused', 'name': 'Unused', 'like': 'manure-horse-straw'}], "
                + "'recipe': [{'material': 'leaves-mixed', 'amount': 10, 'unit': 'L'}], "
                + "'log': [{'date': '2026-03-01', 'added': [{'material': 'our-sprouts', 'amount': 5, 'unit': 'L'}]}]");
        assertEquals(
                List.of("clubroot"),
                HeatLedger.of(pile, TestPile.KNOWLEDGE).inThisPile().stream()
                        .map(f -> f.survivor().id())
                        .toList());
    }

    @Test
    @DisplayName("takes a core for hot enough after 15 days and five turns, and not a turn sooner (40 CFR 257)")
    void hotEnough() {
        assertTrue(ledger(hot(56, 15, 5)).hotEnoughInCore());
        assertFalse(ledger(hot(56, 15, 4)).hotEnoughInCore());
    }

    @Test
    @DisplayName("lays beside a rule the way of it that the record comes nearest to")
    void nearestWay() {
        // Bioabfallverordnung: two weeks at 55 °C, six days at 60 °C or three at 65 °C. Two days at 66 °C lack one of
        // the last; twelve at 57 °C lack two of the first and have none of the others.
        assertEquals(65, nearest(ledger(hot(66, 2, 0)), "germany").need().celsius());
        assertEquals(1, nearest(ledger(hot(66, 2, 0)), "germany").missingDays());
        assertEquals(55, nearest(ledger(hot(57, 12, 0)), "germany").need().celsius());
        assertEquals(2, nearest(ledger(hot(57, 12, 0)), "germany").missingDays());
    }

    /** 15 days and five turns (40 CFR 257): what lacks of both counts alike, and of two that lack as much the longer is told. */
    @Test
    @DisplayName("lays beside a rule the stretch that lacks least of it, days and turns taken together")
    void nearestStretch() {
        RuleCheck.Shown turned = nearest(ledger(hot(56, 10, 0) + "," + from(20, 9, 5)), "us-windrow");
        assertEquals(9, turned.days(), "6 days lack, and not 5 days and 5 turns");
        assertEquals(5, turned.turns());
        RuleCheck.Shown longer = nearest(ledger(hot(56, 8, 5) + "," + from(20, 10, 3)), "us-windrow");
        assertEquals(10, longer.days(), "5 days and 2 turns lack, or 7 days");
    }

    /** A reading a day from a day on, turned on the first days of it. */
    private static String from(int first, int days, int turns) {
        StringJoiner log = new StringJoiner(",");
        for (int day = first; day < first + days; day++) {
            log.add(entry(day, 56, day < first + turns));
        }
        return log.toString();
    }

    @Test
    @DisplayName("knows on a day nothing of what was noted later")
    void later() {
        Pile pile = TestPile.of("'asOf': '2026-03-20', 'built': '2026-02-20', 'log': [{'date': '2026-03-10', 'seen':"
                + " ['much-manure']}, {'date': '2026-03-12', 'added': [{'material': 'brassicas-clubroot', 'amount': 5,"
                + " 'unit': 'L'}]}]");
        assertEquals(2, HeatLedger.of(pile, TestPile.KNOWLEDGE).inThisPile().size());
        Pile then = pile.with(pile.name(), LocalDate.of(2026, 3, 5), pile.recipe(), pile.log());
        assertEquals(List.of(), HeatLedger.of(then, TestPile.KNOWLEDGE).inThisPile());
    }

    @Test
    @DisplayName("works out every published equation")
    void equations() {
        assertEquals(
                TestPile.KNOWLEDGE.sanitation().equations().keySet(),
                ledger(hot(60, 10, 0)).equations().keySet());
    }

    private static RuleCheck.Shown nearest(HeatLedger ledger, String rule) {
        return ledger.rules().stream()
                .filter(r -> r.rule().id().equals(rule))
                .findFirst()
                .flatMap(RuleCheck::nearest)
                .orElseThrow();
    }

    private static RuleCheck.Verdict verdict(HeatLedger ledger, String rule) {
        return ledger.rules().stream()
                .filter(r -> r.rule().id().equals(rule))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    private static Fate.Verdict fate(HeatLedger ledger, String id) {
        return ledger.fates().stream()
                .filter(f -> f.survivor().id().equals(id))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    private static HeatLedger ledger(String log) {
        return HeatLedger.of(
                TestPile.of("'asOf': '2026-06-20', 'built': '2026-02-20', 'log': [" + log + "]"), TestPile.KNOWLEDGE);
    }

    /** A reading a day, and so many turns, each some days after the one before where there is room. */
    private static String hot(double celsius, int days, int turns) {
        StringJoiner log = new StringJoiner(",");
        int every = turns == 0 ? 0 : Math.max(1, days / turns);
        for (int day = 0; day < days; day++) {
            boolean turned = every > 0 && day % every == every - 1 && day / every < turns;
            log.add(entry(day, celsius, turned));
        }
        return log.toString();
    }

    private static String turnedEach(int days) {
        StringJoiner log = new StringJoiner(",");
        for (int day = 0; day < 15; day++) {
            log.add(entry(day, 57, day % days == days - 1));
        }
        return log.toString();
    }

    private static String entry(int day, double celsius, boolean turned) {
        return "{'date': '" + FIRST.plusDays(day) + "', 'measured': {'core': {'value': " + celsius + ", 'unit': 'C'}}"
                + (turned ? ", 'done': ['turned-fully']" : "") + "}";
    }
}
