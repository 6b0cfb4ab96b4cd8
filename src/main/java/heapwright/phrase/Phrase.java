package heapwright.phrase;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** One thing that somebody said, or a name, taken apart: what tells, and which of it denies or doubts. */
final class Phrase {

    /** "Is it finished" tells nothing. */
    private static final Pattern ASKING = Pattern.compile(
            "^(?:(?:is|are|does|do|can|could|should|will) (?:it|that|this|they|there|i|we)|why|how|what|where) ");

    private final List<String> words;
    private final List<String> affirmed;
    private final Map<String, String> telling = new LinkedHashMap<>();
    private final Set<String> denials;
    private final boolean plainlyDenied;

    Phrase(String text) {
        words = WordForms.words(text);
        List<String> denying = words.stream().filter(SmallWords.DENY::contains).toList();
        affirmed = words.stream().filter(w -> !SmallWords.DENY.contains(w)).toList();
        denials = denying.stream().map(SmallWords::denial).collect(Collectors.toCollection(LinkedHashSet::new));
        affirmed.stream().filter(Phrase::tells).forEach(w -> telling.putIfAbsent(WordForms.stem(w), w));
        plainlyDenied = denying.size() == 1
                && words.subList(0, words.indexOf(denying.get(0))).stream().noneMatch(Phrase::tells);
    }

    private static boolean tells(String word) {
        return !SmallWords.SAY_NOTHING.contains(word) && !SmallWords.DOUBT.contains(word);
    }

    /** All words, with a blank between each. */
    String plain() {
        return String.join(" ", words);
    }

    List<String> words() {
        return words;
    }

    /** All words but those that deny, with a blank between each. */
    String affirmed() {
        return String.join(" ", affirmed);
    }

    /** What tells, in the form in which it is compared, without what denies. */
    Set<String> content() {
        return telling.keySet();
    }

    /** What tells, with what denies. */
    Set<String> telling() {
        Set<String> all = new LinkedHashSet<>(denials);
        all.addAll(telling.keySet());
        return all;
    }

    /** What tells, with what denies, but without some words. */
    Set<String> without(Collection<String> some) {
        Set<String> all = telling();
        all.removeAll(some);
        return all;
    }

    /** Whether it tells where, when or how much, and not what. */
    boolean mereDegree() {
        return !denied()
                && !telling.isEmpty()
                && telling.keySet().stream()
                        .allMatch(w -> SmallWords.DEGREE.contains(w) || SmallWords.PLACE.contains(w));
    }

    boolean denied() {
        return !denials.isEmpty();
    }

    /** Whether the person is not sure of it, or asks. */
    boolean doubted() {
        return affirmed.stream().anyMatch(SmallWords.DOUBT::contains)
                || ASKING.matcher(plain()).find();
    }

    /** Whether it is plain what the denial denies: there is one, and it stands before what it denies. */
    boolean plainlyDenied() {
        return plainlyDenied;
    }

    /** Words as they were said, of those in the form in which they are compared. */
    List<String> asSaid(Collection<String> stems) {
        return stems.stream().map(s -> telling.getOrDefault(s, s)).toList();
    }
}
