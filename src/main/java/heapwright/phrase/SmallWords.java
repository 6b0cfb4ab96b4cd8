package heapwright.phrase;

import java.util.Arrays;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Words that bear no name of their own: those that say nothing, deny, doubt, or tell where, when and how much. */
final class SmallWords {

    /** Left out of what is said and of the names. */
    static final Set<String> SAY_NOTHING = Set.of(
            "a", "an", "the", "it", "its", "is", "are", "was", "were", "be", "being", "has", "have", "had", "been",
            "of", "in", "on", "at", "to", "into", "onto", "from", "for", "by", "and", "or", "there", "theres", "some",
            "pile", "heap", "heaps", "like", "as", "does", "do", "did", "any", "looks", "look", "looking", "seems",
            "seem", "s", "that", "thats", "this", "these", "them", "they", "theyre", "i", "im", "ive", "id", "we",
            "weve", "you", "my", "our", "me", "now", "with", "up", "down", "out", "off", "away", "longer", "anymore",
            "more", "also", "but", "then", "so", "will", "would", "can", "see", "seen", "which", "who", "own");

    /** Say where: what is so in one place may be left at that, but not what is not so there. */
    static final Set<String> PLACE = stems(
            "middle inside centre core bottom top side underneath beneath below under outside edge corner surface base over"
                    + " around round through everywhere place patch part half where here lid lift bay");

    /** Of two of these, or of two places, it matters which is said first: "wet outside, dry inside". */
    static final Set<String> CONTRARY = stems("wet damp dry hot warm heat cold cool");

    /** Say when and how much, or are mere filling. */
    static final Set<String> DEGREE = stems(
            "bit very quite rather too really real pretty extremely completely totally absolutely properly all whole just"
                    + " lots full many much plenty terribly awful awfully horribly horrid strongly strong since last week"
                    + " month day today yesterday ago fortnight after when while again always lately recently recent already still one"
                    + " two three four six ten couple morning night bin compost contents stuff mess thing material go get"
                    + " feel come start other else please little something anything left either find"
                    + " found notice noticed sign trace evidence put add throw threw thrown use");

    /** Tell of a time that is over: "soggy last week". */
    static final Set<String> OVER = stems("last yesterday ago");

    /** Tell of how long: "not turned for months" is no "never turned". */
    static final Set<String> SPAN = stems("last yesterday ago since week fortnight month day");

    /** Say that it is not so. */
    static final Set<String> DENY = Set.of(
            "not", "no", "isnt", "doesnt", "dont", "didnt", "without", "hasnt", "havent", "hadnt", "wasnt", "werent",
            "arent", "wont", "wouldnt", "cant", "cannot", "couldnt", "never", "none", "nobody", "noone", "nothing",
            "stopped", "neither", "nor", "aint", "nope", "nah");

    private static final Set<String> UNABLE = Set.of("cant", "cannot", "couldnt");

    /** What sounds like a no and is none: "nothing but slime", "no end of flies". */
    private static final Pattern FALSE_NO = Pattern.compile(
            "\\b(?:nothing but|not only|not just|no end of|no doubt|never stops|(?:doesn|won|can)\\W?t stop)\\b",
            Pattern.CASE_INSENSITIVE);

    /** Say that the person is not sure. */
    static final Set<String> DOUBT = Set.of(
            "sure",
            "know",
            "think",
            "maybe",
            "perhaps",
            "might",
            "possibly",
            "could",
            "if",
            "wonder",
            "probably",
            "unsure",
            "guess",
            "almost",
            "nearly");

    private SmallWords() {}

    private static Set<String> stems(String words) {
        return Arrays.stream(words.split(" ")).map(WordForms::stem).collect(Collectors.toUnmodifiableSet());
    }

    /** A text without what only sounds like a no. */
    static String withoutFalseNo(String text) {
        return FALSE_NO.matcher(text).replaceAll("");
    }

    /** The word by which a denial is compared: "not", unless it tells of all its time, of an end or of who cannot. */
    static String denial(String word) {
        if (UNABLE.contains(word)) {
            return "cannot";
        }
        return word.equals("never") || word.equals("stopped") ? word : "not";
    }
}
