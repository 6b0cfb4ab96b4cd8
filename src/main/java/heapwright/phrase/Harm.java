package heapwright.phrase;

import heapwright.knowledge.Sign;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Hears that somebody may be hurt or ill. What it hears is always asked: a word for harm can be said of a smell or a plant,
 * and somebody who is hurt must not be passed over.
 */
final class Harm {

    /** What harm is called, whether the word tells of a person by itself, and what it can mean. */
    private record Word(Set<String> stems, boolean bySelf, List<Sign> signs) {}

    private static final List<Word> WORDS = List.of(
            word("dizzy headache nausea nauseous queasy lightheaded woozy drowsy migraine", true, Sign.SOMEONE_DIZZY),
            word("sick ill unwell poorly vomiting puked", true, Sign.SOMEONE_DIZZY, Sign.SOMEONE_SWALLOWED),
            word("fainted collapsed unconscious passed", false, Sign.SOMEONE_COLLAPSED, Sign.SOMEONE_DIZZY),
            word(
                    "hurt injured injury wound pain painful ache accident ambulance hospital",
                    true,
                    Sign.STAB_WOUND,
                    Sign.SOMEONE_BURNT,
                    Sign.SOMEONE_DIZZY,
                    Sign.LYE_IN_EYE,
                    Sign.BAD_STING,
                    Sign.SAP_ON_SKIN),
            word("scalded blister", true, Sign.SOMEONE_BURNT, Sign.SAP_ON_SKIN),
            word("burn", false, Sign.SOMEONE_BURNT, Sign.SAP_ON_SKIN),
            word("sting swelling", true, Sign.BAD_STING),
            word("bleeding blood stabbed gash bite", true, Sign.STAB_WOUND),
            word("cut spiked speared fork prong tetanus", false, Sign.STAB_WOUND),
            word("needle pricked syringe jabbed", false, Sign.NEEDLE_STICK),
            word("eye", false, Sign.LYE_IN_EYE, Sign.SAP_ON_SKIN),
            word("itch itchy rash", true, Sign.SAP_ON_SKIN, Sign.BAD_STING),
            word("cough fever wheeze breathless breathe breath asthmatic", true, Sign.FEVER_AFTER_DUST, Sign.BAD_STING),
            word("flu chest lungs", true, Sign.FEVER_AFTER_DUST),
            word("sore", true, Sign.FEVER_AFTER_DUST, Sign.SAP_ON_SKIN, Sign.SOMEONE_BURNT),
            word("swallowed poisoned drank eat mouth", false, Sign.SOMEONE_SWALLOWED, Sign.DOG_IN_FITS),
            word("shaking fits trembling staggers twitching seizure convulsing", false, Sign.DOG_IN_FITS));

    /** Who may be hurt. */
    static final Set<String> PEOPLE = stems(
            "someone somebody anyone anybody everyone everybody he she his her him husband wife partner son daughter child"
                    + " baby toddler mother mum mom father dad grandad granny friend neighbour neighbor"
                    + " boy girl man woman people dog cat puppy pet hand arm foot leg toe finger thumb face skin head mouth"
                    + " lip throat nose");

    private static final Set<String> PETS = stems("dog cat puppy kitten pet");

    private static final Set<String> MYSELF = Set.of("i", "im", "ive", "me", "my", "we", "weve", "us", "our");

    private Harm() {}

    /** The signs of harm that these words may tell of, the nearest first; none if they do not. */
    static List<Sign> in(Phrase saying) {
        Set<Sign> signs = new LinkedHashSet<>();
        if (!words(saying).isEmpty() && saying.content().stream().anyMatch(PETS::contains)) {
            signs.add(Sign.DOG_IN_FITS);
        }
        words(saying).forEach(word -> signs.addAll(word.signs()));
        return new ArrayList<>(signs);
    }

    /** What the words tell beside the harm, whom it came to and what "makes me dizzy". */
    static Set<String> beside(Phrase saying) {
        Set<String> beside = new LinkedHashSet<>(saying.content());
        words(saying).forEach(word -> beside.removeAll(word.stems()));
        beside.removeAll(PEOPLE);
        beside.remove("make");
        return beside;
    }

    private static List<Word> words(Phrase saying) {
        boolean somebody = saying.words().stream().anyMatch(MYSELF::contains)
                || saying.content().stream().anyMatch(PEOPLE::contains);
        boolean smell = saying.content().contains(WordForms.SMELL);
        return WORDS.stream()
                .filter(w -> somebody || w.bySelf() && !smell)
                .filter(w -> w.stems().stream().anyMatch(saying.content()::contains))
                .toList();
    }

    private static Word word(String words, boolean bySelf, Sign... signs) {
        return new Word(stems(words), bySelf, List.of(signs));
    }

    private static Set<String> stems(String words) {
        return Arrays.stream(words.split(" ")).map(WordForms::stem).collect(Collectors.toUnmodifiableSet());
    }
}
