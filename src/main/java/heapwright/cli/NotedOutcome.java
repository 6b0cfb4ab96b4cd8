package heapwright.cli;

import heapwright.pile.Advised;
import heapwright.pile.Advised.Outcome;
import heapwright.pile.AdvisedDocument;
import heapwright.pile.Pile;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What came of the steps that were taken on last, as it is told at the command line. */
final class NotedOutcome {

    @Option(names = "--helped", description = "The steps taken on last were done, and it helped.")
    private boolean helped;

    @Option(names = "--did-not-help", description = "They were done, and what should show has not shown.")
    private boolean failed;

    @Option(names = "--not-done", description = "They were not done.")
    private boolean undone;

    @Option(names = "--step", paramLabel = "STEP", description = "Only this one of the steps taken on.")
    private String step;

    /** What was told, if anything. */
    private Optional<Outcome> told() {
        int flags = (helped ? 1 : 0) + (failed ? 1 : 0) + (undone ? 1 : 0);
        if (flags > 1) {
            throw new UsageFault("heapwright: one step comes to one thing. Give --helped, --did-not-help or --not-done,"
                    + " and where steps differ name one with --step. Example: --helped --step turn-fully");
        }
        if (flags == 0 && step != null) {
            throw new UsageFault(
                    "heapwright: --step " + step + " needs what came of it. Example: --helped --step " + step);
        }
        return helped
                ? Optional.of(Outcome.HELPED)
                : failed
                        ? Optional.of(Outcome.DID_NOT_HELP)
                        : undone ? Optional.of(Outcome.NOT_DONE) : Optional.empty();
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
                pile.advised().stream().filter(a -> a.outcome() == Outcome.OPEN).toList();
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

    /** The document with what was told. */
    byte[] into(byte[] document, List<Advised> steps) throws IOException {
        if (steps.isEmpty()) {
            return document;
        }
        List<String> ids = steps.stream().map(Advised::step).toList();
        return new AdvisedDocument(document)
                .telling(steps.get(0).date(), ids::contains, told().orElseThrow())
                .bytes();
    }
}
