package heapwright.cli;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.Question;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Aim;
import heapwright.pile.Container;
import heapwright.pile.Entry;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import heapwright.pile.Place;
import heapwright.report.TextReport;
import heapwright.report.Words;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Asks about a pile, question by question. Prompts go to the message stream, so that the answer can be piped. */
final class Interview {

    /** A year and a half: an older pile is no longer a pile of this winter. */
    private static final int MOST_WEEKS = 78;

    private static final double MOST_METRES = 10;

    private final Terminal terminal;
    private final Words words;
    private final Advisor advisor;
    private final LocalDate today;
    private final BufferedReader lines;
    private final Set<Sign> seen = EnumSet.noneOf(Sign.class);
    private final Set<Sign> notSeen = EnumSet.noneOf(Sign.class);
    private final Set<Sign> unknown = EnumSet.noneOf(Sign.class);
    private Optional<LocalDate> built = Optional.empty();
    private Container container = Container.unknown();

    Interview(Terminal terminal, Words words, Advisor advisor, Clock clock) {
        this.terminal = terminal;
        this.words = words;
        this.advisor = advisor;
        this.today = LocalDate.now(clock);
        this.lines = terminal.lines();
    }

    /** Asks at most so many questions and gives the pile that the answers describe. */
    Pile run(int most) {
        say(words.text("ask.hello"));
        noticed();
        age();
        size();
        for (int asked = 0; asked < most; asked++) {
            Advice advice = advisor.advise(pile());
            Optional<Question> next = advice.questions().stream()
                    .filter(q -> !unknown.contains(q.sign()))
                    .findFirst();
            if (next.isEmpty()) {
                say(words.text("ask.nothing-more"));
                break;
            }
            say("");
            say(new TextReport(words, false).headline(advice));
            if (!ask(next.get())) {
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
                today,
                Place.unknown(),
                container,
                List.of(),
                List.of(entry),
                Aim.unknown(),
                List.of(),
                Map.of(),
                List.of(),
                Map.of());
    }

    private static List<String> ids(Set<Sign> signs) {
        return signs.stream().map(Sign::id).toList();
    }

    private void noticed() {
        Optional<String> told = prompt(words.text("ask.noticed"));
        if (told.isEmpty() || told.get().isBlank()) {
            return;
        }
        for (String part : told.get().split("[,;]")) {
            Optional<Sign> sign = sign(part);
            if (sign.isPresent()) {
                seen.add(sign.get());
                say(words.text("ask.understood", words.says(sign.get())));
            } else if (!part.isBlank()) {
                say(words.text("ask.not-understood", part.strip()));
            }
        }
    }

    private Optional<Sign> sign(String said) {
        String wanted = said.strip().toLowerCase(Locale.ROOT);
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        return words.knowledge().signs().values().stream()
                .filter(s -> names(s).contains(wanted))
                .map(SignInfo::id)
                .findFirst()
                .or(() -> words.knowledge().signs().values().stream()
                        // "ash" is ash in the pile rather than ash in an eye
                        .sorted(Comparator.comparing(s -> s.sense() == SignInfo.Sense.INCIDENT))
                        .filter(s -> names(s).stream().anyMatch(n -> n.contains(wanted) || wanted.contains(n)))
                        .map(SignInfo::id)
                        .findFirst());
    }

    private static List<String> names(SignInfo sign) {
        List<String> names =
                new ArrayList<>(List.of(sign.id().id(), sign.id().id().replace('-', ' ')));
        names.add(sign.shortName().toLowerCase(Locale.ROOT));
        sign.aliases().forEach(a -> names.add(a.toLowerCase(Locale.ROOT)));
        return names;
    }

    private void age() {
        number(words.text("ask.weeks"), 0, MOST_WEEKS)
                .ifPresent(weeks -> built = Optional.of(today.minusDays(Math.round(weeks * 7))));
    }

    private void size() {
        OptionalDouble edge = number(words.text("ask.size"), 0.1, MOST_METRES);
        if (edge.isPresent()) {
            Container unknownKind = Container.unknown();
            container = new Container(
                    unknownKind.kind(),
                    edge,
                    edge,
                    edge,
                    OptionalDouble.empty(),
                    unknownKind.cover(),
                    unknownKind.base(),
                    unknownKind.insulation(),
                    false);
        }
    }

    private OptionalDouble number(String question, double least, double most) {
        for (Optional<String> told = prompt(question); told.isPresent(); told = prompt(question)) {
            String text = told.get().strip().replace(',', '.');
            if (text.isEmpty() || text.equals("?")) {
                return OptionalDouble.empty();
            }
            try {
                double value = Double.parseDouble(text);
                if (value >= least && value <= most) {
                    return OptionalDouble.of(value);
                }
            } catch (NumberFormatException e) {
                // Said below what is allowed.
            }
            say(words.text(
                    "ask.number", words.figures().round(least), words.figures().round(most)));
        }
        return OptionalDouble.empty();
    }

    /** Asks one question; false when the person wants to stop. */
    private boolean ask(Question question) {
        SignInfo sign = words.knowledge().signs().get(question.sign());
        say(sign.ask());
        say("  " + sign.how());
        say("  " + new TextReport(words, false).helps(question));
        while (true) {
            Optional<String> told = prompt(words.text("ask.choice"));
            String answer = told.map(t -> t.strip().toLowerCase(Locale.ROOT)).orElse("s");
            switch (answer) {
                case "y", "yes" -> {
                    return seen.add(question.sign());
                }
                case "n", "no" -> {
                    return notSeen.add(question.sign());
                }
                case "", "?", "don't know" -> {
                    return unknown.add(question.sign());
                }
                case "s", "stop" -> {
                    return false;
                }
                default -> say(words.text("ask.choices"));
            }
        }
    }

    private void say(String text) {
        terminal.err().println(text);
    }

    /** One line; empty when nothing more comes. */
    private Optional<String> prompt(String text) {
        terminal.err().print(text + " ");
        terminal.err().flush();
        try {
            return Optional.ofNullable(lines.readLine());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
