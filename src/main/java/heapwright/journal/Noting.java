package heapwright.journal;

import heapwright.pile.Advised;
import heapwright.pile.Advised.Outcome;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Piles with something changed. The pile that is given stays as it is. */
public final class Noting {

    private Noting() {}

    /**
     * Notes an entry. It goes after those of its day and before those of later days. The day of advice moves on to the
     * entry's latest date if that is later.
     */
    public static Pile noted(Pile pile, Entry entry) {
        List<Entry> log = new ArrayList<>(pile.log());
        log.add(entry);
        log.sort(Comparator.comparing(Entry::date));
        LocalDate asOf = later(pile.asOf(), entry.date());
        for (Ingredient ingredient : entry.added()) {
            asOf = later(asOf, ingredient.date());
        }
        return pile.with(pile.name(), asOf, pile.recipe(), log);
    }

    /** Sets the day of advice; a day before the present one changes nothing, as the record would lie in the future. */
    public static Pile advisedOn(Pile pile, LocalDate day) {
        return pile.with(pile.name(), later(pile.asOf(), day), pile.recipe(), pile.log());
    }

    /** Takes steps on; one that is open already on the same day is told anew. */
    public static Pile takenOn(Pile pile, List<Advised> steps) {
        List<Advised> all = new ArrayList<>(pile.advised());
        all.removeIf(a -> a.outcome() == Outcome.OPEN
                && steps.stream()
                        .anyMatch(s -> s.date().equals(a.date()) && s.step().equals(a.step())));
        all.addAll(steps);
        all.sort(Comparator.comparing(Advised::date));
        return pile.withAdvised(all);
    }

    /** Tells what came of the open steps of a day. */
    public static Pile told(Pile pile, LocalDate date, Outcome outcome) {
        return pile.withAdvised(pile.advised().stream()
                .map(a -> a.outcome() == Outcome.OPEN && a.date().equals(date) ? a.with(outcome) : a)
                .toList());
    }

    /** Gives the pile another name. */
    public static Pile renamed(Pile pile, String name) {
        return pile.with(name, pile.asOf(), pile.recipe(), pile.log());
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
