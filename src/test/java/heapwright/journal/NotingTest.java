package heapwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.pile.Amount;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class NotingTest {

    private final Pile pile = Samples.pile("Heap");

    @Test
    void entriesStandInOrderOfDateAndThoseOfADayInOrderOfNoting() {
        LocalDate day = LocalDate.of(2026, 11, 15);
        Pile noted = Noting.noted(Noting.noted(pile, Samples.entry(Samples.DAY, "last")), Samples.entry(day, "first"));
        assertEquals(List.of("first", "last"), Samples.notes(noted));
        noted = Noting.noted(noted, Samples.entry(day, "second"));
        assertEquals(List.of("first", "second", "last"), Samples.notes(noted));
        assertEquals(1, pile.log().size());
    }

    @Test
    void theDayOfAdviceMovesOnButNotBack() {
        assertEquals(
                Samples.DAY,
                Noting.noted(pile, Samples.entry(Samples.DAY.minusDays(3), "")).asOf());
        assertEquals(
                Samples.DAY.plusDays(3),
                Noting.noted(pile, Samples.entry(Samples.DAY.plusDays(3), "")).asOf());
        assertEquals(
                Samples.DAY, Noting.advisedOn(pile, Samples.DAY.minusDays(1)).asOf());
        assertEquals(
                Samples.DAY.plusDays(1),
                Noting.advisedOn(pile, Samples.DAY.plusDays(1)).asOf());
    }

    @Test
    void theDayOfAdviceIsNotBeforeTheDayOfWhatWasAdded() {
        Entry plain = Samples.entry(Samples.DAY, "");
        Ingredient later = ingredient(Samples.DAY.plusDays(2));
        Entry entry = new Entry(
                plain.date(), plain.seen(), plain.notSeen(), plain.measured(), plain.done(), List.of(later), "");
        assertEquals(Samples.DAY.plusDays(2), Noting.noted(pile, entry).asOf());
    }

    private Ingredient ingredient(LocalDate day) {
        Ingredient first = pile.recipe().get(0);
        Amount amount = first.amount();
        return new Ingredient(first.material(), amount, first.pieceCm(), first.chopped(), day);
    }

    @Test
    void anotherNameLeavesTheRest() {
        Pile renamed = Noting.renamed(pile, "Other");
        assertEquals("Other", renamed.name());
        assertEquals(pile, Noting.renamed(renamed, "Heap"));
    }

    @Test
    void whatIsTakenBackIsKeptAndCanBePutBack() {
        LocalDate late = LocalDate.of(2027, 11, 21);
        Pile wrong = Noting.noted(pile, Samples.entry(late, "a year too late"));
        String mark = Noting.mark(wrong.log().get(1));
        Pile struck = Noting.struck(wrong, mark);
        assertEquals(pile.log(), struck.log());
        assertEquals(
                List.of("a year too late"),
                struck.struck().stream().map(Entry::note).toList());
        assertEquals(
                LocalDate.of(2026, 11, 10), struck.asOf(), "the day of advice goes back to the latest that is told");
        assertEquals(struck, Noting.struck(struck, mark));
        assertEquals(wrong, Noting.restored(struck, mark));
    }

    @Test
    void ofTwoEqualNotesOneIsTakenBack() {
        Entry same = Samples.entry(Samples.DAY, "same");
        Pile twice = Noting.noted(Noting.noted(pile, same), same);
        assertEquals(List.of("same"), Samples.notes(Noting.struck(twice, Noting.mark(same))));
    }
}
