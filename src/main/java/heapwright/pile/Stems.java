package heapwright.pile;

import java.util.Arrays;
import java.util.List;

/** Words as they are compared: one leaf and many leaves are the same word, ash is no part of squash. */
final class Stems {

    private static final int SHORTEST = 3;

    private Stems() {}

    /** The words of a name, each in its singular, in their order. */
    static List<String> of(String name) {
        return Arrays.stream(MaterialNames.plain(name).split("[^\\p{L}\\p{N}']+"))
                .filter(word -> !word.isEmpty())
                .map(Stems::singular)
                .toList();
    }

    /** Near enough to the English singular: both sides of a comparison are put into the same form. */
    static String singular(String plural) {
        String word = plural.endsWith("'s") ? plural.substring(0, plural.length() - 2) : plural.replace("'", "");
        if (word.length() <= SHORTEST || !word.endsWith("s") || word.endsWith("ss")) {
            return word;
        }
        if (word.endsWith("ies")) {
            return cut(word, 3) + "y";
        }
        if (word.endsWith("aves")) {
            return cut(word, 3) + "f";
        }
        boolean whole = List.of("shes", "ches", "sses", "xes", "oes").stream().anyMatch(word::endsWith);
        return cut(word, whole ? 2 : 1);
    }

    private static String cut(String word, int letters) {
        return word.substring(0, word.length() - letters);
    }

    /** Whether two names of several words differ in a word by more than a slip of the pen: purple and maple wood chips. */
    static boolean foreign(String typed, String name) {
        String[] mine = typed.split(" ");
        String[] theirs = name.split(" ");
        if (mine.length < 2 || mine.length != theirs.length) {
            return false;
        }
        for (int i = 0; i < mine.length; i++) {
            if (Closest.slips(mine[i], theirs[i]) > Math.max(1, mine[i].length() / 3)) {
                return true;
            }
        }
        return false;
    }
}
