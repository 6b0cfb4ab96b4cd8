package heapwright.pile;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the allowed word that was most likely meant. */
public final class Closest {

    /** Nobody misspells so long an id; longer words are not compared, which also bounds the work. */
    private static final int LONGEST = 60;

    private Closest() {}

    /**
     * The candidate with the fewest slips from the given word (a letter left out, put in, changed or swapped with its
     * neighbour), if at most a third of the word is wrong; else the first candidate that begins or ends with the word.
     */
    public static Optional<String> to(String given, Collection<String> candidates) {
        String word = plain(given);
        if (word.isEmpty() || word.length() > LONGEST) {
            return Optional.empty();
        }
        String best = null;
        int fewest = Math.max(1, word.length() / 3) + 1;
        if (word.length() == 1) {
            fewest = 1;
        }
        for (String candidate : candidates.stream().sorted().toList()) {
            String other = plain(candidate);
            if (Math.abs(other.length() - word.length()) >= fewest) {
                continue;
            }
            int slips = slips(word, other);
            if (slips < fewest) {
                fewest = slips;
                best = candidate;
            }
        }
        return best != null ? Optional.of(best) : sharing(word, candidates);
    }

    private static Optional<String> sharing(String word, Collection<String> candidates) {
        return word.length() < 3
                ? Optional.empty()
                : candidates.stream()
                        .sorted()
                        .filter(candidate -> candidate.startsWith(word + "-") || candidate.endsWith("-" + word))
                        .findFirst();
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    }

    /** Damerau–Levenshtein distance with neighbouring swaps (optimal string alignment). */
    static int slips(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                now[j] = Math.min(Math.min(now[j - 1], last[j]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    now[j] = Math.min(now[j], beforeLast[j - 2] + 1);
                }
            }
            int[] free = beforeLast;
            beforeLast = last;
            last = now;
            now = free;
        }
        return last[b.length()];
    }
}
