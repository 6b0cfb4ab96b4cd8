package heapwright.process.sanitation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A batch is judged from the day its last raw part went in: 40 CFR 257 appendix II and 7 CFR 205.203 speak of it so. */
@DisplayName("Heat counts for raw stuff")
class RawStuffTest {

    private static final LocalDate HEAT = LocalDate.of(2026, 3, 1);

    @Test
    @DisplayName("only from the day on which it went in: manure put on after the heat is raw")
    void after() {
        assertTrue(ledger("").hotEnoughInCore());
        HeatLedger raw = ledger(added("2026-04-10", "manure-cattle"));
        assertFalse(raw.hotEnoughInCore());
        assertEquals(Optional.of(LocalDate.of(2026, 4, 10)), raw.countsFrom());
        assertFalse(raw.record().measured());
    }

    @Test
    @DisplayName("only from the day on which weeds in seed went in, which no heat of before has killed")
    void weeds() {
        HeatLedger ledger = ledger(added("2026-04-10", "weeds-in-seed"));
        assertFalse(ledger.hotEnoughInCore());
        assertEquals(Fate.Verdict.NOT_REACHED, fate(ledger, "annual-weed-seed"));
    }

    @Test
    @DisplayName("as it did before, where only leaves went on since")
    void leaves() {
        HeatLedger ledger = ledger(added("2026-04-10", "leaves-mixed"));
        assertTrue(ledger.hotEnoughInCore());
        assertEquals(Optional.empty(), ledger.countsFrom());
    }

    @Test
    @DisplayName("from a yes too, where no such stuff is in the record: meat in April was in no heat of March")
    void yes() {
        HeatLedger ledger = ledger(",{'date': '2026-04-10', 'seen': ['meat-or-dairy']}");
        assertFalse(ledger.hotEnoughInCore());
        assertEquals(Fate.Verdict.NOT_REACHED, fate(ledger, "salmonella"));
        assertEquals(Fate.Verdict.REACHED_IN_CORE, fate(ledger(""), "salmonella"));
    }

    @Test
    @DisplayName("by the record, where it tells the day: a yes to manure in April means that of the recipe")
    void recordOutranks() {
        Pile pile = pile(
                "'recipe': [{'material': 'manure-horse-straw', 'amount': 20, 'unit': 'bucket', 'date': '2026-02-20'}],",
                ",{'date': '2026-04-10', 'seen': ['much-manure']}");
        assertTrue(HeatLedger.of(pile, TestPile.KNOWLEDGE).hotEnoughInCore());
        assertEquals(Optional.of(LocalDate.of(2026, 2, 20)), RawStuff.lastIn(pile, TestPile.KNOWLEDGE));
    }

    @Test
    @DisplayName("of an own material as of the known one that it is like")
    void own() {
        Pile own = pile(
                "'materials': [{'id': 'goat-muck', 'like': 'manure-goat', 'name': 'Goat muck'}],",
                added("2026-04-10", "goat-muck"));
        assertEquals(Optional.of(LocalDate.of(2026, 4, 10)), RawStuff.lastIn(own, TestPile.KNOWLEDGE));
    }

    @Test
    @DisplayName("for each germ and seed from the day on which what carries it went in, by its own name too")
    void eachByItself() {
        String own = "'materials': [{'id': 'goat-muck', 'like': 'manure-goat', 'name': 'Goat muck'}],";
        HeatLedger late = HeatLedger.of(pile(own, added("2026-04-10", "goat-muck")), TestPile.KNOWLEDGE);
        assertEquals(Fate.Verdict.NOT_REACHED, fate(late, "manure-germs"));
        assertEquals(Fate.Verdict.REACHED_IN_CORE, fate(late, "potato-cyst-nematode"), "nothing brought it since");
        HeatLedger weeds = ledger(added("2026-04-10", "roots-couch"));
        assertEquals(Fate.Verdict.REACHED_IN_CORE, fate(weeds, "manure-germs"), "roots bring no germs");
        HeatLedger knotweed = ledger(added("2026-04-10", "knotweed"));
        assertEquals(Fate.Verdict.NOT_REACHED, fate(knotweed, "knotweed"));
        assertEquals(Fate.Verdict.REACHED_IN_CORE, fate(ledger(""), "knotweed"));
    }

    @Test
    @DisplayName("whatever is noted for a day after that of asking")
    void notYet() {
        Pile all = pile(
                "",
                added("2026-05-20", "manure-cattle")
                        + ",{'date': '2026-05-20', 'seen': ['meat-or-dairy', 'pet-waste']}");
        Pile before = all.with(all.name(), LocalDate.of(2026, 5, 19), all.recipe(), all.log());
        HeatLedger ledger = HeatLedger.of(before, TestPile.KNOWLEDGE);
        assertTrue(ledger.hotEnoughInCore());
        assertEquals(Optional.empty(), ledger.countsFrom());
        assertEquals(List.of(), ledger.inThisPile());
        Pile on = all.with(all.name(), LocalDate.of(2026, 5, 20), all.recipe(), all.log());
        HeatLedger today = HeatLedger.of(on, TestPile.KNOWLEDGE);
        assertFalse(today.hotEnoughInCore());
        assertEquals(
                List.of("manure-germs", "salmonella", "pet-parasites"),
                today.inThisPile().stream().map(f -> f.survivor().id()).toList());
    }

    @Test
    @DisplayName("in the record from that day on, its day too")
    void record() {
        assertTrue(HeatRecord.sinceRawStuff(pile("", added("2026-04-10", "manure-cattle")), TestPile.KNOWLEDGE)
                .cores()
                .isEmpty());
        HeatRecord whole = HeatRecord.sinceRawStuff(pile("", ""), TestPile.KNOWLEDGE);
        assertEquals(15, whole.cores().size());
        HeatRecord part = HeatRecord.sinceRawStuff(pile("", added("2026-03-07", "manure-cattle")), TestPile.KNOWLEDGE);
        assertEquals(LocalDate.of(2026, 3, 7), part.cores().firstKey());
        assertEquals(3, part.turns().size(), "two of the five were before");
        assertEquals(4, part.disturbed().size(), "and that day itself");
    }

    private static String added(String day, String material) {
        return ",{'date': '" + day + "', 'added': [{'material': '" + material + "', 'amount': 2, 'unit': 'bucket'}]}";
    }

    private static HeatLedger ledger(String later) {
        return HeatLedger.of(pile("", later), TestPile.KNOWLEDGE);
    }

    /** Fifteen days at 60 °C with five turns, and what came later. */
    private static Pile pile(String fields, String later) {
        StringJoiner log = new StringJoiner(",");
        for (int day = 0; day < 15; day++) {
            log.add("{'date': '" + HEAT.plusDays(day) + "', 'measured': {'core': {'value': 60, 'unit': 'C'}}"
                    + (day % 3 == 2 ? ", 'done': ['turned-fully']" : "") + "}");
        }
        return TestPile.of("'asOf': '2026-06-20', 'built': '2026-02-20', " + fields + " 'log': [" + log + later + "]");
    }

    private static Fate.Verdict fate(HeatLedger ledger, String id) {
        return ledger.fates().stream()
                .filter(f -> f.survivor().id().equals(id))
                .findFirst()
                .orElseThrow()
                .verdict();
    }
}
