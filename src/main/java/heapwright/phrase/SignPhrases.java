package heapwright.phrase;

import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Finds the signs that a person means by a few words. Whole words are compared, never parts of words; what could mean more
 * than one sign, and what a name leaves out, is given back to be asked about: a wrong answer taken without a word is worse
 * than a question.
 */
public final class SignPhrases {

    /** More choices than this are no help at a prompt. */
    private static final int MOST_CHOICES = 8;

    /** "It has gone sour" says that it is sour; "the smell has gone" that it is not. */
    private static final Pattern GONE_AT_THE_END = Pattern.compile("^(.+) gone(?: (?:now|away|again|at last))?$");

    /** What is left of "nothing", "nobody is hurt" and "I don't know": there is nothing to note. */
    private static final Set<String> NO_WORD =
            new Phrase("hurt ill sick injured injury unwell one idea else wrong special unusual").content();

    /** "All is well", "it's fine". */
    private static final Set<String> ALL_WELL =
            new Phrase("all everything everyone everybody fine well good ok okay alright").content();

    /** Smells of which "no smell" tells nothing: the good one, and that of a sample which nobody need have sealed. */
    private static final Set<Sign> OTHER_SMELLS = EnumSet.of(Sign.SMELLS_EARTHY, Sign.BAG_TEST_SMELLS);

    /** What is left of "no smell", "it stinks" and "it doesn't smell". */
    private static final Set<Set<String>> SMELL = Set.of(
            new Phrase("smell").content(),
            new Phrase("bad smell").content(),
            new Phrase("foul smell").content(),
            new Phrase("nasty smell").content());

    /** What a plain "not wet" denies; alone, such a word can mean several signs and is asked. */
    private static final Map<Set<String>, List<Sign>> PLAINLY_NOT = Map.of(
            Set.of("wet"), List.of(Sign.SOGGY, Sign.SQUEEZE_STREAMS),
            Set.of("dry"), List.of(Sign.DUST_DRY, Sign.SQUEEZE_CRUMBLES),
            Set.of("hot"), List.of(Sign.CORE_HOT),
            Set.of("warm"), List.of(Sign.CORE_WARM, Sign.CORE_HOT),
            Set.of("cold"), List.of(Sign.CORE_COLD));

    /** "Was never hot" and "has not been hot" tell of all its time, and not of today. */
    private static final Set<String> SO_FAR = Set.of("never", "been", "was", "wasnt", "hasnt", "has", "got", "ever");

    /** "It wasn't hot" tells of one day; "it has never been hot" of all. */
    private static final Set<String> ONCE = Set.of("was", "wasnt", "were", "werent");

    private static final Set<String> EVER = Set.of("never", "been", "ever");

    /** "It was warm inside" does not tell that it is. */
    private static final Set<String> PAST = Set.of("was", "were", "been", "used", "had");

    private static final Set<SignInfo.Sense> OF_PEOPLE = Set.of(SignInfo.Sense.INCIDENT, SignInfo.Sense.PEOPLE);

    private final SignNames names;
    private final Parts parts;
    private final Map<Sign, SignInfo.Sense> senses = new EnumMap<>(Sign.class);
    private final List<Sign> smells;

    public SignPhrases(Collection<SignInfo> signs) {
        names = new SignNames(signs);
        parts = new Parts(names);
        signs.forEach(s -> senses.put(s.id(), s.sense()));
        smells = signs.stream()
                .filter(s -> s.sense() == SignInfo.Sense.NOSE && !OTHER_SMELLS.contains(s.id()))
                .map(SignInfo::id)
                .toList();
    }

    /** What all of a line means, one thing after the other, in the order in which it was said. */
    public List<PhraseMeaning> hearAll(String line) {
        List<Parts.Whole> wholes = parts.of(line);
        List<PhraseMeaning> all = new ArrayList<>();
        for (Parts.Whole whole : wholes) {
            // "sour smell, very strong" is one thing
            if (wholes.size() == 1 || !new Phrase(whole.said()).mereDegree()) {
                all.addAll(hear(whole));
            }
        }
        return all.isEmpty() ? List.of(hear(line)) : all;
    }

    private List<PhraseMeaning> hear(Parts.Whole whole) {
        PhraseMeaning together = hear(whole.said());
        return whole.parts().size() < 2 || together.certain()
                ? List.of(together)
                : whole.parts().stream()
                        .map(p -> p.doubtful() ? hear(p.said()).doubted() : hear(p.said()))
                        .toList();
    }

    /** What some words mean that tell of one thing. */
    public PhraseMeaning hear(String told) {
        String said = told.strip();
        Phrase whole = new Phrase(SmallWords.withoutFalseNo(said));
        Optional<List<Sign>> several = SeveralMeanings.of(whole);
        if (several.isPresent()) {
            return PhraseMeaning.choice(said, several.get(), false, List.of());
        }
        List<Sign> exact = names.called(whole.plain());
        if (!exact.isEmpty()) {
            return new PhraseMeaning(said, exact, false, exact.size() == 1, List.of());
        }
        if (ALL_WELL.containsAll(whole.telling()) && !whole.content().isEmpty()) {
            return PhraseMeaning.certainly(said, List.of(), false);
        }
        Phrase saying = new Phrase(GONE_AT_THE_END.matcher(whole.plain()).replaceFirst("no $1"));
        return saying.denied() ? denial(said, saying) : affirmed(said, saying);
    }

    private PhraseMeaning affirmed(String said, Phrase saying) {
        if (SMELL.contains(saying.without(SmallWords.DEGREE))) {
            return PhraseMeaning.choice(said, limited(smells), false, List.of());
        }
        SignNames.Near near = names.near(saying.content(), false);
        boolean past = concernsWarmth(near) && saying.words().stream().anyMatch(PAST::contains) || isOver(saying, near);
        return (near.sure() || ofSomebody(near)) && !past && !saying.doubted() && !passedOver(saying, near)
                ? PhraseMeaning.certainly(said, near.signs(), false)
                : several(said, saying).orElseGet(() -> asked(said, saying, near, false));
    }

    private PhraseMeaning denial(String said, Phrase saying) {
        List<Sign> exact = names.called(saying.affirmed());
        boolean plain = saying.plainlyDenied() && !saying.doubted();
        if (!exact.isEmpty() && plain) {
            return new PhraseMeaning(said, exact, true, exact.size() == 1, List.of());
        }
        Set<String> brief = less(saying.content(), SmallWords.DEGREE);
        if (SMELL.contains(brief) && plain) {
            return PhraseMeaning.certainly(said, smells, true);
        }
        if (PLAINLY_NOT.containsKey(brief) && plain && saying.words().stream().noneMatch(SO_FAR::contains)) {
            return PhraseMeaning.certainly(said, PLAINLY_NOT.get(brief), true);
        }
        return nearest(said, saying);
    }

    /**
     * "Not turned" is a yes to "never turned" and a no to "turned"; "turned" is no yes to "never turned". "Stopped heating" is
     * first what it says itself.
     */
    private PhraseMeaning nearest(String said, Phrase saying) {
        SignNames.Near same = names.near(saying.telling(), true);
        boolean once = concernsWarmth(same)
                && saying.words().stream().anyMatch(ONCE::contains)
                && saying.words().stream().noneMatch(EVER::contains);
        if (same.sure() && !once && !saying.doubted() && !tells(saying, SmallWords.SPAN)) {
            return PhraseMeaning.certainly(said, same.signs(), false);
        }
        Optional<PhraseMeaning> several = several(said, saying);
        if (several.isPresent()) {
            return several.get();
        }
        if (NO_WORD.containsAll(less(saying.content(), SmallWords.DEGREE))) {
            return PhraseMeaning.certainly(said, List.of(), true);
        }
        SignNames.Near opposite = names.near(saying.content(), false);
        if (opposite.sure()
                && !opposite.placed()
                && saying.plainlyDenied()
                && !saying.doubted()
                && !isOver(saying, opposite)) {
            return PhraseMeaning.certainly(said, opposite.signs(), true);
        }
        List<Sign> harm = Harm.in(saying);
        boolean yes = !harm.isEmpty() || same.same() || opposite.signs().isEmpty();
        return asked(said, saying, yes && !same.signs().isEmpty() ? same : opposite, !yes);
    }

    private static Optional<PhraseMeaning> several(String said, Phrase saying) {
        return SeveralMeanings.about(saying).map(signs -> PhraseMeaning.choice(said, signs, false, List.of()));
    }

    /** Whether one thing is meant that concerns people, and nothing is left but who it is. */
    private boolean ofSomebody(SignNames.Near near) {
        return near.whole()
                && near.signs().size() == 1
                && OF_PEOPLE.contains(senses.get(near.signs().get(0)))
                && !near.left().isEmpty()
                && Harm.PEOPLE.containsAll(near.left());
    }

    /** Whether the one sign leaves out that somebody may be hurt, or was taken for that from a word about a smell. */
    private boolean passedOver(Phrase saying, SignNames.Near near) {
        boolean incident = senses.get(near.signs().get(0)) == SignInfo.Sense.INCIDENT;
        return incident
                ? saying.content().contains(WordForms.SMELL)
                : !near.left().isEmpty() && !Harm.in(saying).isEmpty();
    }

    /** What is to be asked: somebody hurt comes first, and a smell that is spoken of is among the choices. */
    private PhraseMeaning asked(String said, Phrase saying, SignNames.Near nearest, boolean denied) {
        List<Sign> harm = denied ? List.of() : Harm.in(saying);
        SignNames.Near near = harm.isEmpty() || nearest.whole() ? nearest : names.near(Harm.beside(saying), false);
        Set<Sign> choices = new LinkedHashSet<>(harm);
        choices.addAll(near.whole() ? near.signs() : List.of());
        Set<String> left = new LinkedHashSet<>(near.left());
        if (saying.content().contains(WordForms.SMELL)
                && near.signs().stream().noneMatch(s -> senses.get(s) == SignInfo.Sense.NOSE)) {
            choices.addAll(smells);
            left.remove(WordForms.SMELL);
        }
        // where nobody seems to be hurt, that somebody is comes last
        near.signs().stream()
                .sorted(Comparator.comparing(s -> senses.get(s) == SignInfo.Sense.INCIDENT))
                .forEach(choices::add);
        if (!harm.isEmpty()) {
            left.retainAll(Harm.beside(saying));
        }
        return PhraseMeaning.choice(
                said, limited(choices), denied, choices.isEmpty() ? List.of() : saying.asSaid(left));
    }

    /** Whether it tells of a time that is over, and not of what went in or befell somebody then. */
    private boolean isOver(Phrase saying, SignNames.Near near) {
        return tells(saying, SmallWords.OVER)
                && near.signs().stream()
                        .map(senses::get)
                        .noneMatch(s -> s == SignInfo.Sense.INPUTS || s == SignInfo.Sense.INCIDENT);
    }

    /** Whether it tells of a time in words that are no part of a name. */
    private boolean tells(Phrase saying, Set<String> time) {
        return saying.content().stream().anyMatch(time::contains) && !names.worded(saying.telling());
    }

    private boolean concernsWarmth(SignNames.Near near) {
        return near.signs().stream().anyMatch(s -> senses.get(s) == SignInfo.Sense.WARMTH);
    }

    private static List<Sign> limited(Collection<Sign> signs) {
        return signs.stream().limit(MOST_CHOICES).toList();
    }

    private static Set<String> less(Set<String> words, Set<String> some) {
        Set<String> less = new LinkedHashSet<>(words);
        less.removeAll(some);
        return less;
    }
}
