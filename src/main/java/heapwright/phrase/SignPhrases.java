package heapwright.phrase;

import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Finds the signs that a person means by a few words. Whole words are compared, never parts of words, and what could mean
 * more than one sign is given back as a choice: a wrong answer taken without a word is worse than a question.
 */
public final class SignPhrases {

    /** More choices than this are no help at a prompt. */
    private static final int MOST_CHOICES = 6;

    private static final Set<String> SAY_NOTHING = Set.of(
            "a", "an", "the", "it", "its", "is", "are", "was", "be", "has", "have", "had", "been", "of", "in", "on",
            "at", "to", "and", "there", "some", "very", "quite", "rather", "bit", "little", "too", "pile", "heap",
            "like", "does", "do", "any", "feels", "looks", "seems", "s", "it's", "that's", "there's", "i", "we", "my",
            "our", "still", "now", "really", "more", "anymore", "longer", "with", "gone");

    private static final Set<String> DENY = Set.of(
            "not", "no", "isn't", "isnt", "doesn't", "doesnt", "don't", "dont", "without", "hasn't", "haven't",
            "wasn't", "aren't", "never", "none", "nobody", "nothing", "stopped");

    /** "It has gone sour" says that it is sour; "the smell has gone" that it is not. */
    private static final Pattern GONE_AT_THE_END = Pattern.compile("^(.+) gone(?: (?:now|away|again|at last))?$");

    /** What sounds like a no and is none: "nothing but slime", "no end of flies". */
    private static final Pattern SOUNDS_LIKE_NO = Pattern.compile(
            "\\b(?:nothing but|not only|not just|no end of|no doubt|never stops|doesn't stop|won't stop|can't stop)\\b");

    /** One word for what people call a smell. */
    private static final Set<String> REEKS = Set.of("pong", "whiff", "stink", "reek", "stench", "odour");

    /** What is left of "nothing", "nobody is hurt" and "I don't know": there is nothing to note. */
    private static final Set<String> NO_WORD =
            Set.of("hurt", "ill", "or", "sick", "injured", "one", "sure", "know", "idea", "anything", "else", "wrong");

    private static final Pattern APART = Pattern.compile("[^\\p{L}\\p{N}'’]+");

    /** What is left of "no smell", "it stinks" and "it doesn't smell". */
    private static final Set<Set<String>> SMELL = Set.of(
            Set.of("smell"),
            Set.of("bad", "smell"),
            Set.of("foul", "smell"),
            Set.of("smell", "all"),
            Set.of("smell", "anyth"));

    /** What a plain "not wet" denies; alone, such a word can mean several signs and is asked. */
    private static final Map<String, List<Sign>> PLAINLY_NOT = Map.of(
            "wet", List.of(Sign.SOGGY, Sign.SQUEEZE_STREAMS),
            "dry", List.of(Sign.DUST_DRY, Sign.SQUEEZE_CRUMBLES),
            "hot", List.of(Sign.CORE_HOT),
            "warm", List.of(Sign.CORE_WARM, Sign.CORE_HOT),
            "cold", List.of(Sign.CORE_COLD));

    /** "Was never hot" and "has not been hot" tell of all its time, and not of today. */
    private static final Set<String> SO_FAR = Set.of("never", "been", "was", "wasn't", "hasn't", "has", "got", "ever");

    private final List<Named> named = new ArrayList<>();
    private final List<Sign> smells;

    /** A name of a sign, whether it says that something is not so, and its words without those and those that say nothing. */
    private record Named(SignInfo sign, String whole, boolean denies, List<String> words) {}

    public SignPhrases(Collection<SignInfo> signs) {
        smells = signs.stream()
                .filter(s -> s.sense() == SignInfo.Sense.NOSE && s.id() != Sign.SMELLS_EARTHY)
                .map(SignInfo::id)
                .toList();
        for (SignInfo sign : signs) {
            Set<String> names = new LinkedHashSet<>();
            names.add(sign.id().id().replace('-', ' '));
            names.add(sign.shortName());
            names.addAll(sign.aliases());
            names.forEach(name -> named.add(named(sign, name)));
        }
    }

    private static Named named(SignInfo sign, String name) {
        List<String> kept = kept(words(name));
        return new Named(sign, plain(name), kept.size() < words(name).size(), telling(kept));
    }

    private static List<String> kept(List<String> words) {
        return words.stream().filter(w -> !DENY.contains(w)).toList();
    }

    /** What some words mean. */
    public Heard hear(String said) {
        String whole = plain(said);
        List<Sign> exact = exactly(whole);
        if (!exact.isEmpty()) {
            return new Heard(said.strip(), exact, false, false);
        }
        List<String> words = words(GONE_AT_THE_END
                .matcher(SOUNDS_LIKE_NO.matcher(whole).replaceAll(""))
                .replaceFirst("no $1"));
        List<String> kept = kept(words);
        boolean denied = kept.size() < words.size();
        if (denied) {
            List<Sign> denial = exactly(String.join(" ", kept));
            if (!denial.isEmpty()) {
                return new Heard(said.strip(), denial, true, false);
            }
        }
        List<String> wanted = telling(kept);
        if (denied && NO_WORD.containsAll(wanted)) {
            return new Heard(said.strip(), List.of(), true, true);
        }
        if (SMELL.contains(Set.copyOf(wanted))) {
            return denied
                    ? new Heard(said.strip(), smells, true, true)
                    : new Heard(said.strip(), smells.subList(0, MOST_CHOICES), false, false);
        }
        if (denied && wanted.size() == 1 && words.stream().noneMatch(SO_FAR::contains)) {
            List<Sign> plainly = PLAINLY_NOT.get(wanted.get(0));
            if (plainly != null) {
                return new Heard(said.strip(), plainly, true, true);
            }
        }
        return near(said.strip(), wanted, denied);
    }

    /**
     * The signs near some words. "Not turned" is a yes to "never turned" and a no to "turned"; "turned" is no yes to
     * "never turned".
     */
    private Heard near(String said, List<String> wanted, boolean denied) {
        List<Sign> same =
                near(wanted, named.stream().filter(n -> n.denies() == denied).toList());
        List<Sign> opposite =
                denied ? near(wanted, named.stream().filter(n -> !n.denies()).toList()) : List.of();
        return same.size() == 1 || opposite.isEmpty()
                ? new Heard(said, same, false, false)
                : new Heard(said, opposite, true, false);
    }

    private List<Sign> exactly(String whole) {
        return named.stream()
                .filter(n -> n.whole().equals(whole) && !whole.isEmpty())
                .map(n -> n.sign().id())
                .distinct()
                .toList();
    }

    /** The signs of which a name has all these words, or whose name is wholly among them; the tightest first. */
    private static List<Sign> near(List<String> wanted, List<Named> named) {
        if (wanted.stream().allMatch(w -> w.length() < 3)) {
            return List.of();
        }
        List<Named> close = named.stream()
                .filter(n -> !n.words().isEmpty())
                .filter(n -> all(n.words(), wanted) || all(wanted, n.words()))
                .sorted(Comparator.comparingInt((Named n) -> Math.abs(n.words().size() - wanted.size()))
                        // "ash" is ash in the pile rather than ash in an eye
                        .thenComparing(n -> n.sign().sense() == SignInfo.Sense.INCIDENT)
                        .thenComparing(n -> n.sign().id()))
                .toList();
        int tightest = close.isEmpty() ? 0 : Math.abs(close.get(0).words().size() - wanted.size());
        List<Sign> tight = close.stream()
                .filter(n -> Math.abs(n.words().size() - wanted.size()) == tightest)
                .map(n -> n.sign().id())
                .distinct()
                .toList();
        // The same words in another order are as good as the name; anything else with more than one reading is asked.
        return tightest == 0 && tight.size() == 1
                ? tight
                : close.stream()
                        .map(n -> n.sign().id())
                        .distinct()
                        .limit(MOST_CHOICES)
                        .toList();
    }

    private static boolean all(List<String> some, List<String> among) {
        return new HashSet<>(among).containsAll(some);
    }

    private static List<String> telling(List<String> words) {
        return words.stream()
                .filter(w -> !SAY_NOTHING.contains(w))
                .map(SignPhrases::stem)
                .distinct()
                .toList();
    }

    /** Without the endings that make no difference here: smells, smelling and smelly are smell, and so is a stink. */
    private static String stem(String word) {
        String stem = bare(word);
        return REEKS.contains(stem) ? "smell" : stem;
    }

    private static String bare(String word) {
        for (String ending : List.of("ing", "es", "s", "y", "ed")) {
            if (word.length() > ending.length() + 2 && word.endsWith(ending)) {
                return word.substring(0, word.length() - ending.length());
            }
        }
        return word;
    }

    private static List<String> words(String text) {
        return Arrays.stream(APART.split(text.toLowerCase(Locale.ROOT).replace('’', '\'')))
                .filter(w -> !w.isEmpty())
                .toList();
    }

    private static String plain(String text) {
        return String.join(" ", words(text));
    }
}
