package heapwright.pile;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** A vocabulary prepared for looking words up. */
final class Lexicon {

    private final Set<String> signs;
    private final Map<String, String> signAliases;
    private final Set<String> steps;
    private final MaterialNames materials;
    private final Map<String, Double> measures;
    private final Map<String, Double> pressed;
    private final Map<String, String> measureWords = new HashMap<>();
    private final Map<String, double[]> limits;
    private final Vocabulary vocabulary;

    Lexicon(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        signs = Set.copyOf(vocabulary.signs());
        signAliases = Map.copyOf(vocabulary.signAliases());
        steps = Set.copyOf(vocabulary.steps());
        materials = new MaterialNames(vocabulary);
        measures = Map.copyOf(vocabulary.measures());
        pressed = Map.copyOf(vocabulary.pressed());
        limits = Map.copyOf(vocabulary.limits());
        measures.keySet().forEach(id -> measureWords.put(UnitWords.plain(id), id));
        vocabulary.measureAliases().forEach((word, id) -> measureWords.putIfAbsent(UnitWords.plain(word), id));
        for (Map.Entry<String, String> word : List.copyOf(measureWords.entrySet())) {
            measureWords.putIfAbsent(word.getKey() + "s", word.getValue());
            measureWords.putIfAbsent(word.getKey() + "es", word.getValue());
        }
    }

    Optional<String> sign(String word) {
        return signs.contains(word) ? Optional.of(word) : Optional.ofNullable(signAliases.get(plain(word)));
    }

    Optional<String> nearSign(String word) {
        return Closest.to(word, joined(signs, signAliases.keySet()))
                .map(near -> signs.contains(near) ? near : signAliases.get(near));
    }

    boolean isStep(String id) {
        return steps.contains(id);
    }

    Optional<String> nearStep(String word) {
        return Closest.to(word, steps);
    }

    MaterialNames materials() {
        return materials;
    }

    /** The id of the household measure that a word stands for, singular or plural. */
    Optional<String> measure(String word) {
        return Optional.ofNullable(measureWords.get(UnitWords.plain(word)));
    }

    double litres(String measure) {
        return measures.get(measure);
    }

    /** Kilograms of a measure that is pressed and tied; empty for one that is filled. */
    OptionalDouble pressedKilograms(String measure) {
        Double kilograms = pressed.get(measure);
        return kilograms == null ? OptionalDouble.empty() : OptionalDouble.of(kilograms);
    }

    Collection<String> measureWords() {
        return measureWords.keySet();
    }

    /** The usual figures of a known material. */
    Optional<Vocabulary.Chemistry> chemistry(String material) {
        return vocabulary.chemistry(material);
    }

    Optional<double[]> limit(String id) {
        return Optional.ofNullable(limits.get(id));
    }

    Optional<String> nearLimit(String word) {
        return Closest.to(word, limits.keySet());
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }

    private static Collection<String> joined(Collection<String> some, Collection<String> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }
}
