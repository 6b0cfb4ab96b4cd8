package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A gathered pile")
class GatheredTest {

    private static Pile gathered(String fields) {
        return Gathered.of(TestPile.of("'built': '2026-10-01', 'asOf': '2026-11-21', " + fields));
    }

    @Test
    @DisplayName("has one amount of what went in on one day in one state, and keeps apart what differs")
    void amounts() {
        Pile pile = gathered("'recipe': [{'material': 'straw-general', 'amount': 2, 'unit': 'kg'},"
                + "{'material': 'leaves-mixed', 'amount': 10, 'unit': 'L'},"
                + "{'material': 'straw-general', 'amount': 500, 'unit': 'g'},"
                + "{'material': 'straw-general', 'amount': 3, 'unit': 'kg', 'chopped': true},"
                + "{'material': 'straw-general', 'amount': 10, 'unit': 'L'}]");
        assertEquals(
                List.of("leaves-mixed 10.0 L", "straw-general 10.0 L", "straw-general 2.5 kg", "straw-general 3.0 kg"),
                pile.recipe().stream()
                        .map(i -> i.material() + " " + i.amount().value() + " "
                                + i.amount().unit())
                        .toList());
    }

    @Test
    @DisplayName("has what is at hand once, and as much as needed where any line says so")
    void atHand() {
        Pile pile = gathered("'atHand': [{'material': 'straw-general', 'amount': 2, 'unit': 'kg'},"
                + "{'material': 'leaves-mixed', 'amount': 10, 'unit': 'L'},"
                + "{'material': 'leaves-mixed'},"
                + "{'material': 'straw-general', 'amount': 1, 'unit': 'kg'}]");
        assertEquals(
                List.of(
                        new Stock("leaves-mixed", Optional.empty()),
                        new Stock("straw-general", Optional.of(Amount.ofMass(3, "kg", 3)))),
                pile.atHand());
    }

    @Test
    @DisplayName("has one entry a day: the hottest core, the mean of the rest, and what was seen before what was not")
    void days() {
        Pile pile = gathered("'log': ["
                + "{'date': '2026-11-21', 'seen': ['smells-sour'], 'measured': {'core': {'value': 20, 'unit': 'C'},"
                + "'outdoor': {'value': 1, 'unit': 'C'}}},"
                + "{'date': '2026-11-21', 'notSeen': ['smells-sour', 'soggy'],"
                + "'measured': {'core': {'value': 35, 'unit': 'C'}, 'outdoor': {'value': 4, 'unit': 'C'}}}]");
        assertEquals(1, pile.log().size());
        Entry day = pile.log().get(0);
        assertEquals(List.of("smells-sour"), day.seen());
        assertEquals(List.of("soggy"), day.notSeen());
        assertEquals(OptionalDouble.of(35), day.measured().coreC());
        assertEquals(OptionalDouble.of(2.5), day.measured().outdoorC());
    }

    @Test
    @DisplayName("leaves out an entry that says nothing and keeps one with a note")
    void emptyEntries() {
        Pile pile = gathered("'log': [{'date': '2026-11-20'}, {'date': '2026-11-21', 'note': 'Rain.'}]");
        assertEquals(List.of("Rain."), pile.log().stream().map(Entry::note).toList());
    }

    @Test
    @DisplayName("is gathered already")
    void twice() {
        Pile pile = gathered("'recipe': [{'material': 'straw-general', 'amount': 2, 'unit': 'lb'}]");
        assertEquals(pile, Gathered.of(pile));
        assertTrue(pile.recipe().get(0).amount().kilograms() < 1);
    }
}
