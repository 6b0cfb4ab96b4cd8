package heapwright.cli;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Sign;
import heapwright.phrase.Heard;
import heapwright.phrase.SignPhrases;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** Signs as they are told at the command line, by id or in a few words; what is not certain is asked for again. */
final class NotedSigns {

    @Option(names = "--seen", paramLabel = "SIGNS", description = "What you saw, smelled or felt, parted by commas.")
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
        for (String said : parts(seen)) {
            Heard heard = certain(phrases.hear(said), "--seen", said);
            (heard.denied() ? no : yes).addAll(ids(heard));
        }
        for (String said : parts(notSeen)) {
            Heard heard = certain(phrases.hear(said), "--not-seen", said);
            if (heard.denied()) {
                throw new UsageFault("heapwright: --not-seen \"" + said + "\" says no twice. Write --not-seen \""
                        + String.join(", ", ids(heard)) + "\" or --seen.");
            }
            no.addAll(ids(heard));
        }
        return new Told(yes, no);
    }

    private static List<String> parts(List<String> told) {
        return told.stream()
                .flatMap(t -> List.of(t.split(",")).stream())
                .map(String::strip)
                .filter(t -> !t.isEmpty())
                .toList();
    }

    private static Heard certain(Heard heard, String flag, String said) {
        if (heard.certain() && !heard.meant().isEmpty()) {
            return heard;
        }
        String choice = heard.meant().isEmpty()
                ? " No sign is known by these words. Allowed: a sign of `heapwright signs`."
                : " That can mean several. Allowed: " + String.join(", ", ids(heard)) + ".";
        String example =
                heard.meant().isEmpty() ? "soggy" : heard.meant().get(0).id();
        throw new UsageFault(
                "heapwright: " + flag + ": found \"" + said + "\"." + choice + " Example: " + flag + " " + example);
    }

    private static List<String> ids(Heard heard) {
        return heard.meant().stream().map(Sign::id).collect(Collectors.toList());
    }
}
