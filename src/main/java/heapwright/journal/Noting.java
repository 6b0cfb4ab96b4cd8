package heapwright.journal;

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
        return with(pile, pile.name(), asOf, log);
    }

    /** Sets the day of advice; a day before the present one changes nothing, as the record would lie in the future. */
    public static Pile advisedOn(Pile pile, LocalDate day) {
        return with(pile, pile.name(), later(pile.asOf(), day), pile.log());
    }

    /** Gives the pile another name. */
    public static Pile renamed(Pile pile, String name) {
        return with(pile, name, pile.asOf(), pile.log());
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private static Pile with(Pile pile, String name, LocalDate asOf, List<Entry> log) {
        return new Pile(
                name,
                pile.built(),
                pile.builtAssumed(),
                asOf,
                pile.place(),
                pile.container(),
                pile.recipe(),
                log,
                pile.aim(),
                pile.atHand(),
                pile.measures(),
                pile.materials(),
                pile.limits());
    }
}
