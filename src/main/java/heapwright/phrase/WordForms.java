package heapwright.phrase;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The words of a text in the one form in which they are compared: small letters, no apostrophes, British spelling, and
 * without the endings that make no difference here.
 */
final class WordForms {

    /** The stem of all that a smell is called. */
    static final String SMELL = "smell";

    private static final Pattern APART = Pattern.compile("[^\\p{L}\\p{N}]+");

    private static final Pattern THROWN_UP = Pattern.compile("\\bthr(?:ew|ow|ows|owing|own) up\\b");

    /** A bite, and not a bit of something. */
    private static final Pattern BIT =
            Pattern.compile("\\bbit (?=(?:me|my|him|his|her|us|our|someone|somebody|the)\\b)");

    private static final Set<String> REEKS = Set.of("pong", "whiff", "stink", "reek", "stench", "odour", "niff", "hum");

    /** Other spellings, and forms that no ending tells. */
    private static final Map<String, String> OTHER_FORMS = Map.ofEntries(
            Map.entry("amonia", "ammonia"),
            Map.entry("ammonnia", "ammonia"),
            Map.entry("mold", "mould"),
            Map.entry("moldy", "mouldy"),
            Map.entry("molds", "mould"),
            Map.entry("odor", "odour"),
            Map.entry("odors", "odour"),
            Map.entry("gray", "grey"),
            Map.entry("grayish", "grey"),
            Map.entry("greyish", "grey"),
            Map.entry("sulfur", "sulphur"),
            Map.entry("fertilizer", "fertiliser"),
            Map.entry("center", "centre"),
            Map.entry("slimey", "slimy"),
            Map.entry("drafty", "draughty"),
            Map.entry("fungi", "fungus"),
            Map.entry("leaves", "leaf"),
            Map.entry("mouse", "mice"),
            Map.entry("kid", "child"),
            Map.entry("kids", "child"),
            Map.entry("children", "child"),
            Map.entry("smelt", "smell"),
            Map.entry("stank", "smell"),
            Map.entry("stunk", "smell"),
            Map.entry("sunk", "sink"),
            Map.entry("sank", "sink"),
            Map.entry("shrunk", "shrink"),
            Map.entry("shrank", "shrink"),
            Map.entry("froze", "frozen"),
            Map.entry("ate", "eat"),
            Map.entry("eaten", "eat"),
            Map.entry("dug", "dig"),
            Map.entry("burnt", "burn"),
            Map.entry("stung", "sting"),
            Map.entry("bitten", "bite"),
            Map.entry("swollen", "swell"),
            Map.entry("stuck", "stick"),
            Map.entry("went", "go"),
            Map.entry("gone", "go"),
            Map.entry("goes", "go"),
            Map.entry("going", "go"),
            Map.entry("got", "get"),
            Map.entry("felt", "feel"),
            Map.entry("came", "come"),
            Map.entry("coming", "come"),
            Map.entry("gave", "give"),
            Map.entry("loads", "lots"),
            Map.entry("tons", "lots"),
            Map.entry("masses", "lots"),
            Map.entry("lot", "lots"),
            Map.entry("dying", "die"),
            Map.entry("barbeque", "barbecue"),
            Map.entry("barbie", "barbecue"),
            Map.entry("bbq", "barbecue"));

    private WordForms() {}

    /** The words of a text, in small letters and British spelling; "isn't" and "isnt" are one word. */
    static List<String> words(String text) {
        String plain = text.toLowerCase(Locale.ROOT).replaceAll("(?<=\\p{L})['\u2019](?=\\p{L})", "");
        String verbs =
                BIT.matcher(THROWN_UP.matcher(plain).replaceAll("vomited")).replaceAll("bitten ");
        return Arrays.stream(APART.split(verbs)).filter(w -> !w.isEmpty()).toList();
    }

    /** The words with one blank between each. */
    static String plain(String text) {
        return String.join(" ", words(text));
    }

    /** Without the endings that make no difference: smells, smelling and smelly are smell, and so is a stink. */
    static String stem(String word) {
        String british = OTHER_FORMS.getOrDefault(word, word);
        String stem = shortened(british);
        return REEKS.contains(stem) ? SMELL : OTHER_FORMS.getOrDefault(stem, stem);
    }

    private static String shortened(String word) {
        if (word.endsWith("ies") && word.length() > 4) {
            return word.length() == 5 ? word.substring(0, 2) + "y" : undoubled(word.substring(0, word.length() - 3));
        }
        String single = singular(word);
        for (String ending : List.of("ing", "ed", "y")) {
            if (single.length() > ending.length() + 2 && single.endsWith(ending) && !single.endsWith("eed")) {
                return bare(undoubled(single.substring(0, single.length() - ending.length())));
            }
        }
        return bare(single);
    }

    private static String singular(String word) {
        if (word.length() < 4 || !word.endsWith("s") || word.endsWith("ss") || word.endsWith("us")) {
            return word;
        }
        return word.matches(".+(?:s|x|z|ch|sh|o)es")
                ? word.substring(0, word.length() - 2)
                : word.substring(0, word.length() - 1);
    }

    /** "Dripp" of dripping is drip; smell, grass, whiff and egg stay. */
    private static String undoubled(String stem) {
        int last = stem.length() - 1;
        boolean doubled =
                last > 2 && stem.charAt(last) == stem.charAt(last - 1) && "lsefz".indexOf(stem.charAt(last)) < 0;
        return doubled ? stem.substring(0, last) : stem;
    }

    /** Smoking and smoke have no e. */
    private static String bare(String stem) {
        return stem.length() > 4 && stem.endsWith("e") ? stem.substring(0, stem.length() - 1) : stem;
    }
}
