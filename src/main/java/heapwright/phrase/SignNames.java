package heapwright.phrase;

import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The names of all signs, and which of them some words are, hold or begin. */
final class SignNames {

    /** To share these makes no two things alike. */
    private static final Set<String> NO_LIKENESS =
            Set.of(WordForms.SMELL, "not", "never", "stopped", "cannot", "bad", "good", "near");

    private final List<Named> names = new ArrayList<>();

    /** A name of a sign, whether it is its own or what people also say, and its words in the form in which they are compared, with those that deny. */
    private record Named(SignInfo sign, String plain, boolean own, boolean denies, Set<String> words) {
        Sign id() {
            return sign.id();
        }

        /** Whether all its words are among those said, and in its order where another order says the opposite. */
        boolean within(Set<String> said) {
            return said.containsAll(words)
                    && (!contrasts()
                            || said.stream().filter(words::contains).toList().equals(List.copyOf(words)));
        }

        private boolean contrasts() {
            return words.stream().filter(SmallWords.PLACE::contains).count() > 1
                    || words.stream().filter(SmallWords.CONTRARY::contains).count() > 1;
        }
    }

    /**
     * Names near some words.
     *
     * @param signs of which a name is near, the nearest first
     * @param same whether the words are as good as a name of the sign
     * @param placed whether they are so only without the words that say where
     * @param whole whether a name stands wholly in the words
     * @param left words in the form in which they are compared that no name has
     */
    record Near(List<Sign> signs, boolean same, boolean placed, boolean whole, Set<String> left) {
        /** Whether just one sign can be meant by all that was said. */
        boolean sure() {
            return same && signs.size() == 1;
        }
    }

    SignNames(Collection<SignInfo> signs) {
        for (SignInfo sign : signs) {
            Set<String> all = new LinkedHashSet<>();
            all.add(sign.id().id().replace('-', ' '));
            all.add(sign.shortName());
            all.addAll(sign.aliases());
            for (String name : all) {
                Phrase saying = new Phrase(name);
                names.add(new Named(
                        sign, saying.plain(), !sign.aliases().contains(name), saying.denied(), saying.telling()));
            }
        }
    }

    /** Names in which a word stands that parts what is said elsewhere, such as "dark and crumbly"; the longest first. */
    List<String> with(Predicate<String> parting) {
        return names.stream()
                .map(Named::plain)
                .filter(parting)
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
    }

    /** The signs of this very name, word for word. */
    List<Sign> called(String plain) {
        return signs(names.stream().filter(n -> !plain.isEmpty() && n.plain().equals(plain)));
    }

    /** Whether some name has just these words. */
    boolean worded(Set<String> said) {
        return names.stream().anyMatch(n -> n.words().equals(said));
    }

    /** The signs near some words; of names that deny, or of names that do not. */
    Near near(Set<String> said, boolean denying) {
        List<Named> those = names.stream()
                .filter(n -> n.denies() == denying && !n.words().isEmpty())
                .toList();
        Set<String> brief = less(said, SmallWords.DEGREE);
        Set<String> placeless = less(brief, SmallWords.PLACE);
        for (Set<String> words : List.of(said, brief, placeless)) {
            List<Sign> same = signs(those.stream().filter(n -> n.words().equals(words) && n.within(words)));
            if (!same.isEmpty()) {
                return new Near(same, true, words.size() < brief.size(), true, Set.of());
            }
        }
        List<Named> within = those.stream().filter(n -> n.within(said)).toList();
        return within.isEmpty() ? begun(those, said, brief) : held(within, said);
    }

    /** No name stands wholly in the words; the nearest are those that go on from them, then those that share a word. */
    private static Near begun(List<Named> those, Set<String> said, Set<String> brief) {
        List<Sign> going = brief.isEmpty() || brief.stream().allMatch(w -> w.length() < 3)
                ? List.of()
                : signs(those.stream()
                        .filter(n -> n.words().containsAll(brief))
                        .sorted(Comparator.comparingInt((Named n) -> n.words().size())
                                // "ash" is ash in the pile rather than ash in an eye
                                .thenComparing(n -> n.sign().sense() == SignInfo.Sense.INCIDENT)
                                .thenComparing(Named::id)));
        if (!going.isEmpty()) {
            boolean bareSmell = going.size() == 1
                    && those.stream()
                            .anyMatch(n -> n.own()
                                    && less(n.words(), Set.of(WordForms.SMELL)).equals(brief));
            return new Near(going, bareSmell, false, false, Set.of());
        }
        Set<String> rare = less(less(brief, SmallWords.PLACE), NO_LIKENESS);
        int most = those.stream().mapToInt(n -> shared(n, rare)).max().orElse(0);
        List<Named> sharing =
                those.stream().filter(n -> most > 0 && shared(n, rare) == most).toList();
        return new Near(signs(sharing.stream()), false, false, false, left(rare, sharing));
    }

    /** Names stand wholly in the words: those that are no part of another such name. */
    private static Near held(List<Named> within, Set<String> said) {
        List<Named> widest = within.stream()
                .filter(n -> within.stream()
                        .noneMatch(o ->
                                o.words().size() > n.words().size() && o.words().containsAll(n.words())))
                .toList();
        Set<String> placed = less(left(said, widest), SmallWords.DEGREE);
        Set<String> left = less(placed, SmallWords.PLACE);
        List<Sign> signs = signs(widest.stream());
        return new Near(signs, left.isEmpty() && signs.size() == 1, !placed.isEmpty(), true, left);
    }

    private static int shared(Named named, Set<String> said) {
        return (int) said.stream()
                .filter(w -> w.length() > 2 && named.words().contains(w))
                .count();
    }

    private static Set<String> left(Set<String> said, List<Named> named) {
        Set<String> left = new LinkedHashSet<>(said);
        named.forEach(n -> left.removeAll(n.words()));
        return left;
    }

    private static Set<String> less(Set<String> words, Set<String> some) {
        Set<String> less = new LinkedHashSet<>(words);
        less.removeAll(new HashSet<>(some));
        return less;
    }

    private static List<Sign> signs(Stream<Named> named) {
        return named.map(Named::id).distinct().toList();
    }
}
