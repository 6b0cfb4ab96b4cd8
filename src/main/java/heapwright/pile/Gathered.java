package heapwright.pile;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The same pile told in one way, whatever the order in which a person wrote it down: what went in twice on a day and in
 * the same state is one amount, amounts are in kilograms or litres, lists stand in the order of the materials' ids, a day has one
 * entry, and an entry that says nothing is left out. All advice
 * starts from it, so that it cannot depend on how the record was kept.
 *
 * <p>Of two readings of the core on a day the higher counts, since the core is where it is hottest and a probe can miss
 * it, and of the lowest through the day the lower; of anything else measured twice on a day, the mean. What was seen on a day was there, even if another look that
 * day missed it.
 */
public final class Gathered {

    private static final Comparator<Ingredient> INGREDIENTS = Comparator.comparing(Ingredient::date)
            .thenComparing(Ingredient::material)
            .thenComparing(one -> one.amount().isMass())
            .thenComparing(Ingredient::chopped)
            .thenComparing(one -> one.pieceCm().orElse(0));

    private Gathered() {}

    /** The pile, gathered. */
    public static Pile of(Pile pile) {
        return new Pile(
                pile.name(),
                pile.built(),
                pile.builtAssumed(),
                pile.builtAbout(),
                pile.asOf(),
                pile.place(),
                pile.container(),
                ingredients(pile.recipe()),
                log(pile.log()),
                pile.struck(),
                pile.advised(),
                pile.keeper(),
                pile.aim(),
                stocks(pile.atHand()),
                pile.measures(),
                pile.materials(),
                pile.limits());
    }

    /** What makes two lines of a recipe one amount. */
    private record Same(String material, boolean mass, OptionalDouble pieceCm, boolean chopped, LocalDate date) {}

    private static List<Ingredient> ingredients(List<Ingredient> told) {
        Map<Same, Ingredient> gathered = new LinkedHashMap<>();
        Map<Same, List<Amount>> amounts = new LinkedHashMap<>();
        for (Ingredient one : told) {
            Same same = new Same(one.material(), one.amount().isMass(), one.pieceCm(), one.chopped(), one.date());
            gathered.putIfAbsent(same, one);
            amounts.computeIfAbsent(same, s -> new ArrayList<>()).add(one.amount());
        }
        return gathered.entrySet().stream()
                .map(e -> new Ingredient(
                        e.getKey().material(),
                        sum(amounts.get(e.getKey())),
                        e.getKey().pieceCm(),
                        e.getKey().chopped(),
                        e.getKey().date()))
                .sorted(INGREDIENTS)
                .toList();
    }

    private static List<Stock> stocks(List<Stock> told) {
        Map<String, List<Stock>> byMaterial =
                told.stream().collect(Collectors.groupingBy(Stock::material, TreeMap::new, Collectors.toList()));
        List<Stock> gathered = new ArrayList<>();
        byMaterial.forEach((material, stocks) -> {
            if (stocks.stream().anyMatch(s -> s.available().isEmpty())) {
                gathered.add(new Stock(material, Optional.empty()));
                return;
            }
            List<Amount> amounts =
                    stocks.stream().map(s -> s.available().orElseThrow()).toList();
            for (boolean mass : new boolean[] {false, true}) {
                List<Amount> alike =
                        amounts.stream().filter(a -> a.isMass() == mass).toList();
                if (!alike.isEmpty()) {
                    gathered.add(new Stock(material, Optional.of(sum(alike))));
                }
            }
        });
        return gathered;
    }

    /** The sum of amounts that are all masses or all volumes, in kilograms or litres. */
    private static Amount sum(List<Amount> amounts) {
        if (amounts.get(0).isMass()) {
            double kilograms = sum(amounts, Amount::kilograms);
            return Amount.ofMass(kilograms, MassUnit.KILOGRAM.symbol(), kilograms);
        }
        double litres = sum(amounts, Amount::litres);
        return Amount.ofVolume(litres, VolumeUnit.LITRE.symbol(), litres);
    }

    private static double sum(List<Amount> amounts, Function<Amount, Double> what) {
        return Rounding.summed(amounts.stream().map(what).sorted().reduce(0.0, Double::sum));
    }

    private static List<Entry> log(List<Entry> told) {
        Map<LocalDate, List<Entry>> byDay =
                told.stream().collect(Collectors.groupingBy(Entry::date, TreeMap::new, Collectors.toList()));
        return byDay.entrySet().stream()
                .map(e -> day(e.getKey(), e.getValue()))
                .filter(Gathered::tells)
                .toList();
    }

    private static Entry day(LocalDate date, List<Entry> entries) {
        List<String> seen = all(entries, Entry::seen);
        List<String> notSeen = all(entries, Entry::notSeen);
        notSeen.removeAll(Set.copyOf(seen));
        List<Ingredient> added =
                entries.stream().flatMap(e -> e.added().stream()).toList();
        List<Action> done = entries.stream()
                .flatMap(e -> e.done().stream())
                .distinct()
                .sorted()
                .toList();
        String note = entries.stream()
                .map(Entry::note)
                .filter(n -> !n.isBlank())
                .sorted()
                .collect(Collectors.joining("\n"));
        return new Entry(date, seen, notSeen, measured(entries), done, ingredients(added), tested(entries), note);
    }

    /** Of a test that was read twice on a day the worse result counts, and a clear one before none. */
    private static List<Tested> tested(List<Entry> entries) {
        Map<HomeTest, Tested> worst = new TreeMap<>();
        Comparator<Tested> bad = Comparator.comparing((Tested t) -> t.result() != Tested.Result.UNCLEAR)
                .thenComparing(Tested::result);
        entries.stream()
                .flatMap(e -> e.tested().stream())
                .forEach(t -> worst.merge(t.test(), t, (a, b) -> bad.compare(a, b) >= 0 ? a : b));
        return List.copyOf(worst.values());
    }

    /** Whether an entry says anything at all. */
    private static boolean tells(Entry entry) {
        return !entry.seen().isEmpty()
                || !entry.notSeen().isEmpty()
                || !entry.done().isEmpty()
                || !entry.added().isEmpty()
                || !entry.tested().isEmpty()
                || !entry.measured().equals(Measured.nothing())
                || !entry.note().isBlank();
    }

    private static List<String> all(List<Entry> entries, Function<Entry, List<String>> what) {
        Set<String> all = new LinkedHashSet<>();
        entries.forEach(e -> all.addAll(what.apply(e)));
        List<String> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.naturalOrder());
        return sorted;
    }

    private static Measured measured(List<Entry> entries) {
        if (entries.size() == 1) {
            return entries.get(0).measured();
        }
        List<Measured> all = entries.stream().map(Entry::measured).toList();
        Optional<Measured> hottest = all.stream()
                .filter(m -> m.coreC().isPresent())
                .max(Comparator.comparingDouble((Measured m) -> m.coreC().getAsDouble())
                        .thenComparingDouble(m -> m.coreDepthCm().orElse(0)));
        return new Measured(
                hottest.map(Measured::coreC).orElse(OptionalDouble.empty()),
                lowest(all),
                hottest.map(Measured::coreDepthCm).orElse(OptionalDouble.empty()),
                mean(all, Measured::outdoorC),
                mean(all, Measured::moisturePct),
                mean(all, Measured::bulkDensityKgM3),
                mean(all, Measured::ph),
                mean(all, Measured::heightM));
    }

    /** The lowest that was read through the day; a reading at one moment says nothing of it. */
    private static OptionalDouble lowest(List<Measured> all) {
        return all.stream().flatMapToDouble(m -> m.coreLowestC().stream()).min();
    }

    private static OptionalDouble mean(List<Measured> all, Function<Measured, OptionalDouble> what) {
        double[] values = all.stream()
                .map(what)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .sorted()
                .toArray();
        if (values.length < 2) {
            return values.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(values[0]);
        }
        return OptionalDouble.of(Rounding.summed(Arrays.stream(values).sum() / values.length));
    }
}
