package heapwright.cli;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.Question;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.phrase.AgePhrase;
import heapwright.phrase.KindPhrase;
import heapwright.phrase.LengthPhrase;
import heapwright.pile.Aim;
import heapwright.pile.Container;
import heapwright.pile.Entry;
import heapwright.pile.Keeper;
import heapwright.pile.LengthUnit;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import heapwright.pile.Place;
import heapwright.report.AdviceWords;
import heapwright.report.HeadlineText;
import heapwright.report.Units;
import heapwright.report.Words;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/** Asks about a pile, question by question. Prompts go to the message stream, so that the answer can be piped. */
final class Interview {

    /** Ten years and a few days: leaf mould and dry toilets are asked about after years; more than that is a slip. */
    private static final int MOST_WEEKS = 525;

    private static final double LEAST_METRES = 0.1;
    private static final double MOST_METRES = 10;

    private final Dialogue dialogue;
    private final Words words;
    private final Advisor advisor;
    private final LocalDate today;
    private final Set<Sign> seen = EnumSet.noneOf(Sign.class);
    private final Set<Sign> notSeen = EnumSet.noneOf(Sign.class);
    private final Set<Sign> unknown = EnumSet.noneOf(Sign.class);
    private boolean builtAbout;
    private Optional<LocalDate> built = Optional.empty();
    private Optional<Container.Kind> kind = Optional.empty();
    private Container container = Container.unknown();
    private boolean stopped;

    Interview(Terminal terminal, Words words, Advisor advisor, Clock clock) {
        this.dialogue = new Dialogue(terminal);
        this.words = words;
        this.advisor = advisor;
        this.today = LocalDate.now(clock);
    }

    /** Asks at most so many questions and gives the pile that the answers describe. */
    Pile run(int most) {
        dialogue.say(words.text("ask.hello"));
        stopped = !new SignDialogue(dialogue, words, today).ask(seen, notSeen, this::builtOn);
        age();
        kind();
        size();
        for (int asked = 0; asked < most && !stopped; asked++) {
            Advice advice = advisor.advise(pile(), unknown);
            List<Question> open = advice.questions();
            if (open.stream().noneMatch(q -> q.settles() > 0)) {
                dialogue.say(words.text("ask.nothing-more"));
                break;
            }
            dialogue.say("");
            dialogue.say(new HeadlineText(words).of(advice));
            if (!ask(open.get(0), advice.pile().container().kind())) {
                break;
            }
        }
        return pile();
    }

    private Pile pile() {
        Entry entry = new Entry(today, ids(seen), ids(notSeen), Measured.nothing(), List.of(), List.of(), "");
        return new Pile(
                words.text("ask.pile-name"),
                built.orElseGet(() -> Pile.assumedBuilt(today)),
                built.isEmpty(),
                built.isPresent() && builtAbout,
                today,
                Place.unknown(),
                container,
                List.of(),
                List.of(entry),
                List.of(),
                List.of(),
                Keeper.unknown(),
                Aim.unknown(),
                List.of(),
                Map.of(),
                List.of(),
                Map.of());
    }

    private static List<String> ids(Set<Sign> signs) {
        return signs.stream().map(Sign::id).toList();
    }

    /** Takes a day on which it was built; false where it is longer ago than a pile may be. */
    private boolean builtOn(LocalDate day, boolean about) {
        if (day.isBefore(today.minusWeeks(MOST_WEEKS))) {
            return false;
        }
        built = Optional.of(day);
        builtAbout = about;
        return true;
    }

    private void age() {
        if (built.isEmpty()) {
            understood(
                    words.text("ask.age"),
                    "ask.age-again",
                    text -> AgePhrase.day(text, today).filter(day -> builtOn(day, !AgePhrase.exact(text))));
        }
    }

    private void kind() {
        kind = understood(words.text("ask.kind"), "ask.kind-again", KindPhrase::kind);
    }

    private void size() {
        LengthUnit bare = words.figures().units() == Units.US ? LengthUnit.FOOT : LengthUnit.METRE;
        List<OptionalDouble> sides = understood(words.text("ask.size"), "ask.size-again", text -> {
                    List<Double> metres = LengthPhrase.sides(text, bare);
                    boolean real = metres.stream().allMatch(m -> m >= LEAST_METRES && m <= MOST_METRES);
                    return real && !metres.isEmpty() ? Optional.of(metres) : Optional.empty();
                })
                .map(m -> m.stream().map(OptionalDouble::of).toList())
                .orElse(Collections.nCopies(3, OptionalDouble.empty()));
        Container unknown = Container.unknown();
        container = new Container(
                kind.orElse(unknown.kind()),
                sides.get(0),
                sides.get(1),
                sides.get(2),
                OptionalDouble.empty(),
                unknown.cover(),
                unknown.base(),
                unknown.insulation(),
                false);
    }

    /** Asks until the answer is understood, and says what was not; empty where the person does not know or stops. */
    private <T> Optional<T> understood(String question, String again, Function<String, Optional<T>> meaning) {
        while (!stopped) {
            Optional<String> told = dialogue.prompt(question);
            Reply reply = Reply.of(told);
            stopped = reply == Reply.STOP;
            if (stopped || reply == Reply.UNKNOWN) {
                return Optional.empty();
            }
            String text = told.orElseThrow().strip();
            Optional<T> meant = meaning.apply(text);
            if (meant.isPresent()) {
                return meant;
            }
            dialogue.say(words.text(again, text));
        }
        return Optional.empty();
    }

    /** Asks one question; false when the person wants to stop. */
    private boolean ask(Question question, Container.Kind kind) {
        SignInfo sign = words.knowledge().signs().get(question.sign());
        dialogue.say(sign.ask());
        dialogue.say("  " + sign.how(kind));
        dialogue.say("  " + new AdviceWords(words).helps(question));
        while (true) {
            switch (Reply.of(dialogue.prompt(words.text("ask.choice")))) {
                case YES -> {
                    return seen.add(question.sign());
                }
                case NO -> {
                    return notSeen.add(question.sign());
                }
                case UNKNOWN -> {
                    return unknown.add(question.sign());
                }
                case STOP -> {
                    return false;
                }
                case OTHER -> dialogue.say(words.text("ask.choices"));
            }
        }
    }
}
