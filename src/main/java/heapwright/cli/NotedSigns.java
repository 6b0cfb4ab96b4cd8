package heapwright.cli;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Sign;
import heapwright.phrase.PhraseMeaning;
import heapwright.phrase.SignPhrases;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** Signs as they are told at the command line, by id or in a few words; what is not certain is asked for again. */
final class NotedSigns {

    @Option(names = "--seen", paramLabel = "SIGNS", description = "What you saw, smelled or felt, separated by commas.")
    private List<String> seen = List.of();

    @Option(names = "--not-seen", paramLabel = "SIGNS", description = "What you looked for and did not find.")
    private List<String> notSeen = List.of();

    /** Ids of what was seen and of what was not. */
    record Told(List<String> seen, List<String> notSeen) {}

    /**
     * What was told.
     *
     * @throws UsageFault for words that no sign is meant by, or several
     */
    Told told(Knowledge knowledge) {
        SignPhrases phrases = new SignPhrases(knowledge.signs().values());
        List<String> yes = new ArrayList<>();
        List<String> no = new ArrayList<>();
        for (PhraseMeaning heard : heard(phrases, seen, "--seen")) {
            (heard.denied() ? no : yes).addAll(ids(heard));
        }
        for (PhraseMeaning heard : heard(phrases, notSeen, "--not-seen")) {
            if (heard.denied()) {
                throw new UsageFault("heapwright: --not-seen \"" + heard.said()
                        + "\" says no twice. Write --not-seen \"" + String.join(", ", ids(heard)) + "\" or --seen.");
            }
            no.addAll(ids(heard));
        }
        return new Told(yes, no);
    }

    private static List<PhraseMeaning> heard(SignPhrases phrases, List<String> told, String flag) {
        return told.stream()
                .filter(t -> !t.isBlank())
                .flatMap(t -> phrases.hearAll(t).stream())
                .map(h -> certain(h, flag))
                .toList();
    }

    private static PhraseMeaning certain(PhraseMeaning heard, String flag) {
        if (heard.certain() && !heard.meant().isEmpty()) {
            return heard;
        }
        String example =
                heard.meant().isEmpty() ? "soggy" : heard.meant().get(0).id();
        throw new UsageFault("heapwright: " + flag + ": found \"" + heard.said() + "\". " + found(heard) + " Example: "
                + (heard.denied() && !heard.meant().isEmpty() ? "--not-seen" : flag) + " " + example);
    }

    /** What is not certain, and what is allowed. */
    private static String found(PhraseMeaning heard) {
        if (heard.meant().isEmpty()) {
            return "No sign is known by these words. Allowed: a sign of `heapwright signs`.";
        }
        String left = heard.left().isEmpty()
                ? ""
                : "Not understood in it: \"" + String.join(" ", heard.left()) + "\". Write each thing by itself. ";
        String several = heard.meant().size() == 1 ? "That may not be what is meant. " : "That can mean several. ";
        return (left.isEmpty() ? several : left) + "Allowed: " + String.join(", ", ids(heard)) + ".";
    }

    private static List<String> ids(PhraseMeaning heard) {
        return heard.meant().stream().map(Sign::id).collect(Collectors.toList());
    }
}
