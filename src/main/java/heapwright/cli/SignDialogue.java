package heapwright.cli;

import heapwright.knowledge.Sign;
import heapwright.phrase.AgePhrase;
import heapwright.phrase.PhraseMeaning;
import heapwright.phrase.SignPhrases;
import heapwright.report.Days;
import heapwright.report.Words;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Asks what was noticed, in the person's own words, and asks again about what could mean several things or nothing. */
final class SignDialogue {

    private final Dialogue dialogue;
    private final Words words;
    private final LocalDate today;
    private final SignPhrases phrases;

    /** Takes the day on which it was built, and whether that is only about the day; false where it cannot be. */
    interface Built {
        boolean on(LocalDate day, boolean about);
    }

    SignDialogue(Dialogue dialogue, Words words, LocalDate today) {
        this.dialogue = dialogue;
        this.words = words;
        this.today = today;
        this.phrases = new SignPhrases(words.knowledge().signs().values());
    }

    /**
     * Asks until all was understood or the person goes on, and adds what was noticed and what was not; an age in it is
     * taken too.
     *
     * @return false where the person wants to stop
     */
    boolean ask(Set<Sign> seen, Set<Sign> notSeen, Built built) {
        Optional<String> told = dialogue.prompt(words.text("ask.noticed"));
        while (true) {
            Reply reply = Reply.of(told);
            if (reply == Reply.STOP || reply == Reply.UNKNOWN) {
                return reply != Reply.STOP;
            }
            boolean understood = true;
            for (PhraseMeaning heard : phrases.hearAll(told.orElseThrow())) {
                understood &= age(heard, built) || note(heard, heard.denied() ? notSeen : seen);
            }
            if (understood) {
                return true;
            }
            told = dialogue.prompt(words.text("ask.other-words"));
        }
    }

    /** Whether a thing that was said is how old the pile is; the bare length of time may be that of a sign, so it is asked. */
    private boolean age(PhraseMeaning heard, Built built) {
        Optional<LocalDate> day = heard.certain() ? Optional.empty() : AgePhrase.ofPile(heard.said(), today);
        if (day.isEmpty()
                || !AgePhrase.saysAge(heard.said())
                        && Reply.of(dialogue.prompt(words.text("ask.so-old", heard.said()))) != Reply.YES) {
            return false;
        }
        if (!built.on(day.get(), !AgePhrase.exact(heard.said()))) {
            return false;
        }
        dialogue.say(words.text("ask.built", new Days(words).of(day.get())));
        return true;
    }

    /** Notes what was heard; false where something of it is still to be said in other words. */
    private boolean note(PhraseMeaning heard, Set<Sign> signs) {
        if (heard.meant().isEmpty()) {
            dialogue.say(words.text(heard.certain() ? "ask.nothing-to-note" : "ask.not-understood", heard.said()));
            return heard.certain();
        }
        for (Sign sign : heard.certain() ? heard.meant() : chosen(heard)) {
            signs.add(sign);
            dialogue.say(words.text("ask.understood", told(heard, sign)));
        }
        return heard.left().isEmpty();
    }

    private String told(PhraseMeaning heard, Sign sign) {
        return heard.denied() ? words.knowledge().signs().get(sign).deny() : words.says(sign);
    }

    /** Lets the person say which of several signs is meant, or whether the one is; none is taken without a word. */
    private List<Sign> chosen(PhraseMeaning heard) {
        dialogue.say(words.text(heard.meant().size() == 1 ? "ask.one" : "ask.several", heard.said()));
        if (!heard.left().isEmpty()) {
            dialogue.say(words.text("ask.left", String.join(" ", heard.left())));
        }
        for (int i = 0; i < heard.meant().size(); i++) {
            dialogue.say("  " + (i + 1) + "  " + told(heard, heard.meant().get(i)));
        }
        boolean one = heard.meant().size() == 1;
        while (true) {
            Optional<String> told = dialogue.prompt(words.text(one ? "ask.which-one" : "ask.which"));
            Reply reply = Reply.of(told);
            String answer = told.orElse("").strip();
            if (reply == Reply.NO || reply == Reply.UNKNOWN || reply == Reply.STOP || answer.equalsIgnoreCase("none")) {
                return List.of();
            }
            if (one && reply == Reply.YES) {
                return heard.meant();
            }
            List<Integer> numbers = Arrays.stream(answer.split("[,;\\s]+"))
                    .map(n -> n.matches("[0-9]{1,3}") ? Integer.parseInt(n) : 0)
                    .toList();
            if (numbers.stream().allMatch(n -> n >= 1 && n <= heard.meant().size())) {
                return numbers.stream()
                        .distinct()
                        .map(n -> heard.meant().get(n - 1))
                        .toList();
            }
            dialogue.say(words.text("ask.which-again", answer, heard.meant().size()));
        }
    }
}
