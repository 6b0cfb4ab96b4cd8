package heapwright.knowledge;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * A weed, pest or disease and what published trials say of it and heat.
 *
 * @param id its id
 * @param name what it is called
 * @param kind what it is
 * @param fate what becomes of it in a pile
 * @param needs the heat that killed it in trials, where it is one that heat kills
 * @param neverCompost whether it stays out of a home pile whatever the trials say
 * @param notifiable whether it must be reported in many countries
 * @param materials ids of materials that may carry it
 * @param signs signs that tell of it
 * @param trials what was tried
 * @param then what to do with compost that it may be in
 */
public record Survivor(
        String id,
        String name,
        Kind kind,
        Fate fate,
        Optional<Need> needs,
        boolean neverCompost,
        boolean notifiable,
        List<String> materials,
        List<Sign> signs,
        List<Trial> trials,
        String then) {
    public Survivor {
        materials = List.copyOf(materials);
        signs = List.copyOf(signs);
        trials = List.copyOf(trials);
    }

    /** The same with its sentences put another way. */
    Survivor reworded(UnaryOperator<String> wording) {
        List<Trial> told = trials.stream()
                .map(t -> new Trial(
                        t.celsius(),
                        t.toCelsius(),
                        t.days(),
                        t.result(),
                        wording.apply(t.said()),
                        t.source(),
                        t.known()))
                .toList();
        return new Survivor(
                id, name, kind, fate, needs, neverCompost, notifiable, materials, signs, told, wording.apply(then));
    }

    /** What it is. */
    public enum Kind implements Id {
        WEED,
        ROOT,
        DISEASE,
        VIRUS,
        NEMATODE,
        GERM
    }

    /** What becomes of it. */
    public enum Fate implements Id {
        /** Published heat killed it. */
        HEAT,
        /** It came alive through heat that a home pile hardly reaches. */
        OUTLIVES,
        /** Time and decay are enough. */
        COOL,
        /** No published heat is known, or the advice differs. */
        UNKNOWN
    }

    /** The heat that killed it: in a row, with turns. */
    public record Need(double celsius, double days, int turns) {}

    /** What came of a trial. */
    public enum Result implements Id {
        KILLED,
        FEW,
        SURVIVED,
        UNKNOWN
    }

    /**
     * A trial, or a word of advice.
     *
     * @param celsius the temperature, or the lowest of it
     * @param toCelsius the highest of it
     * @param days for how long
     * @param result what came of it
     * @param said the same in words
     * @param source key of the source
     * @param known how it is known
     */
    public record Trial(
            OptionalDouble celsius,
            OptionalDouble toCelsius,
            OptionalDouble days,
            Result result,
            String said,
            String source,
            Known known) {}
}
