package heapwright.advice;

import heapwright.pile.Amount;
import heapwright.pile.Container;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** The same pile with one figure a hair larger or smaller. */
final class Hairs {

    /** A pile with one figure changed, and which. */
    record Hair(String figure, Pile pile) {}

    private Hairs() {}

    /** The pile with each amount, each measured figure and each side of its container changed in turn. */
    static List<Hair> of(Pile pile, double factor) {
        List<Hair> all = new ArrayList<>();
        for (int i = 0; i < pile.recipe().size(); i++) {
            List<Ingredient> recipe = new ArrayList<>(pile.recipe());
            recipe.set(i, times(recipe.get(i), factor));
            all.add(new Hair("recipe/" + i, pile.with(pile.name(), pile.asOf(), recipe, pile.log())));
        }
        for (int i = 0; i < pile.log().size(); i++) {
            Entry entry = pile.log().get(i);
            for (int k = 0; k < entry.added().size(); k++) {
                List<Ingredient> added = new ArrayList<>(entry.added());
                added.set(k, times(added.get(k), factor));
                all.add(new Hair("log/" + i + "/added/" + k, with(pile, i, with(entry, entry.measured(), added))));
            }
            for (Measured measured : measured(entry.measured(), factor)) {
                all.add(new Hair(
                        "log/" + i + "/measured " + measured, with(pile, i, with(entry, measured, entry.added()))));
            }
        }
        for (Container container : containers(pile.container(), factor)) {
            if (!container.equals(pile.container())) {
                all.add(new Hair("container", with(pile, container)));
            }
        }
        return all;
    }

    private static Ingredient times(Ingredient one, double factor) {
        Amount a = one.amount();
        Amount amount = new Amount(a.value() * factor, a.unit(), a.kilograms() * factor, a.litres() * factor);
        return new Ingredient(one.material(), amount, one.pieceCm(), one.chopped(), one.date());
    }

    private static Pile with(Pile pile, int i, Entry entry) {
        List<Entry> log = new ArrayList<>(pile.log());
        log.set(i, entry);
        return pile.with(pile.name(), pile.asOf(), pile.recipe(), log);
    }

    private static Entry with(Entry e, Measured measured, List<Ingredient> added) {
        return new Entry(e.date(), e.seen(), e.notSeen(), measured, e.done(), added, e.note());
    }

    private static List<Measured> measured(Measured m, double factor) {
        UnaryOperator<OptionalDouble> times = v -> v.isPresent() ? OptionalDouble.of(v.getAsDouble() * factor) : v;
        List<Measured> all = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Measured changed = new Measured(
                    i == 0 ? times.apply(m.coreC()) : m.coreC(),
                    m.coreLowestC(),
                    m.coreDepthCm(),
                    i == 1 ? times.apply(m.outdoorC()) : m.outdoorC(),
                    i == 2 ? capped(times.apply(m.moisturePct()), 100) : m.moisturePct(),
                    i == 3 ? times.apply(m.bulkDensityKgM3()) : m.bulkDensityKgM3(),
                    i == 4 ? capped(times.apply(m.ph()), 14) : m.ph(),
                    i == 5 ? times.apply(m.heightM()) : m.heightM());
            if (!changed.equals(m)) {
                all.add(changed);
            }
        }
        return all;
    }

    private static OptionalDouble capped(OptionalDouble value, double most) {
        return value.isPresent() ? OptionalDouble.of(Math.min(most, value.getAsDouble())) : value;
    }

    private static List<Container> containers(Container c, double factor) {
        UnaryOperator<OptionalDouble> times = v -> v.isPresent() ? OptionalDouble.of(v.getAsDouble() * factor) : v;
        List<Container> all = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            all.add(new Container(
                    c.kind(),
                    i == 0 ? times.apply(c.lengthM()) : c.lengthM(),
                    i == 1 ? times.apply(c.widthM()) : c.widthM(),
                    i == 2 ? times.apply(c.heightM()) : c.heightM(),
                    i == 3 ? times.apply(c.volumeM3()) : c.volumeM3(),
                    c.cover(),
                    c.base(),
                    c.insulation(),
                    c.rodentProof()));
        }
        return all;
    }

    private static Pile with(Pile p, Container container) {
        return new Pile(
                p.name(),
                p.built(),
                p.builtAssumed(),
                p.builtAbout(),
                p.asOf(),
                p.place(),
                container,
                p.recipe(),
                p.log(),
                p.struck(),
                p.advised(),
                p.keeper(),
                p.aim(),
                p.atHand(),
                p.measures(),
                p.materials(),
                p.limits());
    }
}
