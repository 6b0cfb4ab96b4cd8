package heapwright.journal;

import heapwright.pile.Advised;
import heapwright.pile.Advised.Outcome;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import heapwright.pile.PileWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Piles with something changed. The pile that is given stays as it is. */
public final class Noting {

    private Noting() {}

    /**
     * Notes an entry. It goes after those of its day and before those of later days. The day of advice moves on to the
     * entry's latest date if that is later.
     */
    public static Pile noted(Pile pile, Entry entry) {
        return pile.with(pile.name(), later(pile.asOf(), latest(entry)), pile.recipe(), sorted(pile.log(), entry));
    }

    /** Tells an entry from others of the record by what it holds; two with the same words on one day are told as one. */
    public static String mark(Entry entry) {
        return RequestKey.of(PileWriter.entry(entry).toString()).value();
    }

    /** The entry of a record with that mark, the first if several have it. */
    public static Optional<Entry> marked(List<Entry> record, String mark) {
        return record.stream().filter(e -> mark(e).equals(mark)).findFirst();
    }

    /** The last entry of a day. */
    public static Optional<Entry> last(Pile pile, LocalDate day) {
        return pile.log().stream().filter(e -> e.date().equals(day)).reduce((first, second) -> second);
    }

    /**
     * Takes an entry back: it counts no longer and is kept among the struck. The day of advice goes back where only that
     * entry had moved it on. A pile without such an entry stays as it is.
     */
    public static Pile struck(Pile pile, String mark) {
        Optional<Entry> entry = marked(pile.log(), mark);
        if (entry.isEmpty()) {
            return pile;
        }
        Pile without = pile.withLog(less(pile.log(), entry.get()), sorted(pile.struck(), entry.get()));
        return latest(entry.get()).equals(pile.asOf())
                ? without.with(pile.name(), latest(without), pile.recipe(), without.log())
                : without;
    }

    /** Puts an entry back that was taken back. */
    public static Pile restored(Pile pile, String mark) {
        return marked(pile.struck(), mark)
                .map(e -> noted(pile.withLog(pile.log(), less(pile.struck(), e)), e))
                .orElse(pile);
    }

    private static List<Entry> less(List<Entry> entries, Entry one) {
        List<Entry> rest = new ArrayList<>(entries);
        rest.remove(one);
        return rest;
    }

    private static List<Entry> sorted(List<Entry> entries, Entry more) {
        List<Entry> all = new ArrayList<>(entries);
        all.add(more);
        all.sort(Comparator.comparing(Entry::date));
        return all;
    }

    private static LocalDate latest(Entry entry) {
        return entry.added().stream().map(Ingredient::date).reduce(entry.date(), Noting::later);
    }

    private static LocalDate latest(Pile pile) {
        LocalDate latest = pile.built();
        for (Entry entry : pile.log()) {
            latest = later(latest, latest(entry));
        }
        for (Ingredient ingredient : pile.recipe()) {
            latest = later(latest, ingredient.date());
        }
        for (Advised step : pile.advised()) {
            latest = later(latest, step.date());
        }
        return latest;
    }

    /** Sets the day of advice; a day before the present one changes nothing, as the record would lie in the future. */
    public static Pile advisedOn(Pile pile, LocalDate day) {
        return pile.with(pile.name(), later(pile.asOf(), day), pile.recipe(), pile.log());
    }

    /** Takes steps on; one that is open already on the same day is told anew. */
    public static Pile takenOn(Pile pile, List<Advised> steps) {
        List<Advised> all = new ArrayList<>(pile.advised());
        all.removeIf(a -> a.outcome().open()
                && steps.stream()
                        .anyMatch(s -> s.date().equals(a.date()) && s.step().equals(a.step())));
        all.addAll(steps);
        all.sort(Comparator.comparing(Advised::date));
        return pile.withAdvised(all);
    }

    /**
     * Tells what came of open steps. The day of advice moves on to the day for which it is told if that is later.
     *
     * @param date the day of the advice
     * @param which the ids of the steps that are meant
     * @param outcome what came of them
     * @param day the day for which that is told
     */
    public static Pile told(Pile pile, LocalDate date, Predicate<String> which, Outcome outcome, LocalDate day) {
        return advisedOn(pile, day)
                .withAdvised(pile.advised().stream()
                        .map(a -> a.outcome().open() && a.date().equals(date) && which.test(a.step())
                                ? a.with(outcome, day)
                                : a)
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
