package heapwright.phrase;

import heapwright.pile.Container;
import heapwright.pile.Container.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Finds the kind of pile that a person means by "a tumbler" or "worm bin in the cellar". Whole words are compared; what
 * could mean several kinds ("a bin") is not guessed.
 */
public final class KindPhrase {

    private static final Pattern APART = Pattern.compile("[^\\p{L}]+");

    private static final Set<String> DENY = Set.of("not", "no", "without", "isn", "never");

    private static final List<Named> NAMES = List.of(
            named(Kind.OPEN_HEAP, "heap", "pile", "open heap", "free heap"),
            named(
                    Kind.SLATTED_BIN,
                    "slatted bin",
                    "slats",
                    "slatted",
                    "pallets",
                    "pallet",
                    "wooden bin",
                    "boards",
                    "bay",
                    "bays",
                    "crate",
                    "box"),
            named(Kind.WIRE_RING, "wire ring", "ring", "wire", "wire bin", "netting"),
            named(Kind.CLOSED_BIN, "closed bin", "plastic bin", "lidded bin"),
            named(Kind.INSULATED_BIN, "insulated bin", "insulated"),
            named(Kind.TUMBLER, "tumbler", "drum", "turning drum", "barrel"),
            named(Kind.PIT, "pit", "hole"),
            named(Kind.TRENCH, "trench", "dug in", "buried", "dug into bed"),
            named(Kind.FED_BIN, "fed bit by bit", "fed little and often", "kitchen bin", "bin fed", "fed bin"),
            named(
                    Kind.LEAF_CAGE,
                    "leaf cage",
                    "leaf mould",
                    "leaf mold",
                    "leafmould",
                    "cage of leaves",
                    "leaf heap",
                    "leaves in wire",
                    "leaf pile"),
            named(Kind.WORM_BIN, "worm bin", "worms", "wormery", "worm farm", "worm box"),
            named(Kind.BOKASHI, "bokashi", "bran bucket"));

    private record Named(Kind kind, List<Set<String>> names) {}

    private KindPhrase() {}

    /** The kind that is meant; empty where none or more than one could be. */
    public static Optional<Container.Kind> kind(String said) {
        Set<String> words = words(said);
        if (words.stream().anyMatch(DENY::contains)) {
            return Optional.empty();
        }
        int most = 0;
        List<Kind> best = new ArrayList<>();
        for (Named named : NAMES) {
            int told = named.names().stream()
                    .filter(words::containsAll)
                    .mapToInt(Set::size)
                    .max()
                    .orElse(0);
            if (told > most) {
                most = told;
                best.clear();
            }
            if (told == most && told > 0) {
                best.add(named.kind());
            }
        }
        if (best.size() > 1) {
            best.remove(Kind.OPEN_HEAP);
        }
        return best.size() == 1 ? Optional.of(best.get(0)) : Optional.empty();
    }

    private static Named named(Kind kind, String... names) {
        return new Named(kind, Arrays.stream(names).map(KindPhrase::words).toList());
    }

    private static Set<String> words(String text) {
        Set<String> words = new HashSet<>(Arrays.asList(APART.split(text.toLowerCase(Locale.ROOT))));
        words.remove("");
        return words;
    }
}
