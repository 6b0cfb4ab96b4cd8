package heapwright.cli;

import heapwright.pile.Advised;
import heapwright.pile.Advised.Outcome;
import heapwright.pile.AdvisedDocument;
import heapwright.pile.Pile;
import java.io.IOException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What came of the steps that were taken on last, as it is told at the command line. */
final class NotedOutcome {

    @Option(names = "--helped", description = "The steps taken on last were done, and it helped.")
    private boolean helped;

    @Option(names = "--did-not-help", description = "They were done, and what should show has not shown.")
    private boolean failed;

    @Option(names = "--did-it", description = "They were done; whether it helps shows later.")
    private boolean done;

    @Option(names = "--not-done", description = "They were not done.")
    private boolean undone;

    @Option(names = "--step", paramLabel = "STEP", description = "Only this one of the steps taken on.")
    private String step;

    /** What was told, if anything. */
    private Optional<Outcome> told() {
        Map<Outcome, Boolean> flags = new EnumMap<>(Map.of(
                Outcome.HELPED, helped, Outcome.DID_NOT_HELP, failed, Outcome.DONE, done, Outcome.NOT_DONE, undone));
        flags.values().removeIf(given -> !given);
        if (flags.size() > 1) {
            throw new UsageFault("heapwright: one step comes to one thing. Give --helped, --did-not-help, --did-it or"
                    + " --not-done, and where steps differ name one with --step. Example: --helped --step turn-fully");
        }
        if (flags.isEmpty() && step != null) {
            throw new UsageFault(
                    "heapwright: --step " + step + " needs what came of it. Example: --helped --step " + step);
        }
        return flags.keySet().stream().findFirst();
    }

    /**
     * The steps that were meant; empty where nothing was told.
     *
     * @throws UsageFault where no such step is open
     */
    List<Advised> steps(Pile pile) {
        if (told().isEmpty()) {
            return List.of();
        }
        List<Advised> open =
                pile.advised().stream().filter(a -> a.outcome().open()).toList();
        if (open.isEmpty()) {
            throw new UsageFault("heapwright: no step is open in this file. Take one on with checkup --keep."
                    + " Example: heapwright checkup --keep pile.json");
        }
        List<Advised> last = open.stream()
                .filter(a -> a.date().equals(open.get(open.size() - 1).date()))
                .toList();
        List<Advised> meant =
                last.stream().filter(a -> step == null || a.step().equals(step)).toList();
        if (meant.isEmpty()) {
            throw new UsageFault("heapwright: --step: found \"" + step + "\". Allowed: "
                    + String.join(", ", last.stream().map(Advised::step).toList()) + ". Example: --step "
                    + last.get(0).step());
        }
        return meant;
    }

    /** The document with what was told for a day. */
    byte[] into(byte[] document, List<Advised> steps, LocalDate day) throws IOException {
        if (steps.isEmpty()) {
            return document;
        }
        Outcome outcome = told().orElseThrow();
        return new AdvisedDocument(document)
                .telling(steps.stream().map(s -> s.with(outcome, day)).toList())
                .bytes();
    }
}
