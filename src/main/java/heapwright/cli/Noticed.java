package heapwright.cli;

import heapwright.knowledge.Sign;
import heapwright.phrase.Heard;
import heapwright.phrase.SignPhrases;
import heapwright.report.Words;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Asks what was noticed, in the person's own words, and asks again about what could mean several things or nothing. */
final class Noticed {

    private static final Set<String> NONE = Set.of("", "?", "n", "no", "none");
    private static final Set<String> YES = Set.of("y", "yes");

    private final Dialogue dialogue;
    private final Words words;
    private final SignPhrases phrases;

    Noticed(Dialogue dialogue, Words words) {
        this.dialogue = dialogue;
        this.words = words;
        this.phrases = new SignPhrases(words.knowledge().signs().values());
    }

    /** Asks until all was understood or the person goes on, and adds what was noticed and what was not. */
    void ask(Set<Sign> seen, Set<Sign> notSeen) {
        Optional<String> told = dialogue.prompt(words.text("ask.noticed"));
        while (told.isPresent() && !told.get().isBlank()) {
            boolean understood = true;
            for (Heard heard : phrases.hearAll(told.get())) {
                understood &= note(heard, heard.denied() ? notSeen : seen);
            }
            told = understood ? Optional.empty() : dialogue.prompt(words.text("ask.other-words"));
        }
    }

    /** Notes what was heard; false where something of it is still to be said in other words. */
    private boolean note(Heard heard, Set<Sign> signs) {
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

    private String told(Heard heard, Sign sign) {
        return heard.denied() ? words.knowledge().signs().get(sign).deny() : words.says(sign);
    }

    /** Lets the person say which of several signs is meant, or whether the one is; none is taken without a word. */
    private List<Sign> chosen(Heard heard) {
        dialogue.say(words.text(heard.meant().size() == 1 ? "ask.one" : "ask.several", heard.said()));
        if (!heard.left().isEmpty()) {
            dialogue.say(words.text("ask.left", String.join(" ", heard.left())));
        }
        for (int i = 0; i < heard.meant().size(); i++) {
            dialogue.say("  " + (i + 1) + "  " + told(heard, heard.meant().get(i)));
        }
        boolean one = heard.meant().size() == 1;
        while (true) {
            String answer = dialogue.prompt(words.text(one ? "ask.which-one" : "ask.which"))
                    .orElse("")
                    .strip()
                    .toLowerCase(Locale.ROOT);
            if (NONE.contains(answer)) {
                return List.of();
            }
            if (one && YES.contains(answer)) {
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
