package heapwright.pile;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * A pile as its file describes it, checked and in SI units. The day of advice is an input: nothing in Heapwright reads
 * a clock to reason about a pile.
 *
 * @param name what the person calls it, {@link PileReader#UNNAMED} if not stated
 * @param built the day it was built; if not stated, see {@link #assumedBuilt}
 * @param builtAssumed whether that day is a guess, as the file does not tell it
 * @param builtAbout whether that day was told roughly, in weeks or by the month, and is to be shown so
 * @param asOf the day for which advice is wanted; the latest date of the file if not stated
 * @param place where it stands
 * @param container what holds it
 * @param recipe what it was built from
 * @param log what happened since, in order of date
 * @param struck entries of the record that were taken back; kept, and read by nobody who reasons
 * @param advised what was advised and taken on, in order of date, and what came of it
 * @param keeper what whoever looks after it has for it
 * @param aim what it is wanted for
 * @param atHand materials at hand
 * @param measures litres of household measures the person has redefined, by measure id
 * @param materials the person's own materials and figures
 * @param limits the person's own figures for limits, by limit id
 */
public record Pile(
        String name,
        LocalDate built,
        boolean builtAssumed,
        boolean builtAbout,
        LocalDate asOf,
        Place place,
        Container container,
        List<Ingredient> recipe,
        List<Entry> log,
        List<Entry> struck,
        List<Advised> advised,
        Keeper keeper,
        Aim aim,
        List<Stock> atHand,
        Map<String, Double> measures,
        List<OwnMaterial> materials,
        Map<String, Double> limits) {
    /** A pile of unknown age is taken as about a month old; judgement: piles that people ask about are mostly past their start. */
    private static final int ASSUMED_AGE = 30;

    /** How much younger a pile of assumed age may well be, days; judgement. */
    public static final int MAY_BE_YOUNGER = 15;

    /** How much older a pile of assumed age may well be, days; judgement. */
    public static final int MAY_BE_OLDER = 29;

    public Pile {
        recipe = List.copyOf(recipe);
        log = List.copyOf(log);
        struck = List.copyOf(struck);
        advised = List.copyOf(advised);
        atHand = List.copyOf(atHand);
        measures = Map.copyOf(measures);
        materials = List.copyOf(materials);
        limits = Map.copyOf(limits);
    }

    /**
     * The same pile under a name, on a day, with a recipe and a record; the day must not lie before the last of the
     * record.
     */
    public Pile with(String name, LocalDate asOf, List<Ingredient> recipe, List<Entry> log) {
        return copy(name, built, asOf, recipe, log, struck, advised, keeper);
    }

    /** The same pile with what was taken on and what came of it. */
    public Pile withAdvised(List<Advised> steps) {
        return copy(name, built, asOf, recipe, log, struck, steps, keeper);
    }

    /** The same pile with another record, and what was taken back of it. */
    public Pile withLog(List<Entry> entries, List<Entry> takenBack) {
        return copy(name, built, asOf, recipe, entries, takenBack, advised, keeper);
    }

    /** The same pile as if it had been built on another day, none after the first of its recipe or the day of advice. */
    public Pile builtOn(LocalDate day) {
        return copy(name, day, asOf, recipe, log, struck, advised, keeper);
    }

    /** The same pile looked after by somebody else. */
    public Pile withKeeper(Keeper other) {
        return copy(name, built, asOf, recipe, log, struck, advised, other);
    }

    private Pile copy(
            String name,
            LocalDate built,
            LocalDate asOf,
            List<Ingredient> recipe,
            List<Entry> log,
            List<Entry> struck,
            List<Advised> advised,
            Keeper keeper) {
        return new Pile(
                name,
                built,
                builtAssumed,
                builtAbout,
                asOf,
                place,
                container,
                recipe,
                log,
                struck,
                advised,
                keeper,
                aim,
                atHand,
                measures,
                materials,
                limits);
    }

    /**
     * The day a pile was built where nobody told it: about a month before the first day of its record. Every door takes
     * it from here, and says so.
     *
     * @param firstDay the earliest date that is told of it
     */
    public static LocalDate assumedBuilt(LocalDate firstDay) {
        return firstDay.minusDays(ASSUMED_AGE);
    }
}
