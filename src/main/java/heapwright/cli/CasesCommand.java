package heapwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.casebook.Case;
import heapwright.casebook.CaseFault;
import heapwright.casebook.Casebook;
import heapwright.casebook.RuleHolds;
import heapwright.casebook.RuleHolds.Hold;
import heapwright.casebook.Scored;
import heapwright.casebook.Verdict;
import heapwright.knowledge.Cause;
import heapwright.report.JsonText;
import heapwright.report.Layout;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs the cases of a folder and tells how far the advice agrees with each source. */
@Command(
        name = CasesCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Runs the cases of a folder and tells how far the advice agrees with each source.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  heapwright cases",
            "  heapwright cases cases/published",
            "  heapwright cases --by-source cases/unfitted",
            "  heapwright cases --by-source --fit cases/fresh cases/published",
            "  heapwright cases --unheld",
            "  heapwright cases --unheld=guard",
            "  heapwright cases --unheld=too-wet"
        })
final class CasesCommand implements Callable<Integer> {

    static final String NAME = "cases";

    private static final String EVERY_PASS = "all";

    private final Terminal terminal;
    private final Services workshop;

    @Parameters(
            paramLabel = "FOLDER",
            arity = "0..*",
            defaultValue = "cases",
            description = "The folders of cases (default: ${DEFAULT-VALUE}).")
    private List<Path> folders;

    @Option(
            names = "--unheld",
            paramLabel = "PASS|CAUSE",
            arity = "0..1",
            split = ",",
            fallbackValue = EVERY_PASS,
            description = "List the rules and rows of evidence that no case holds: each is left out in turn, and the"
                    + " cases in which it speaks must fail without it. Of passes (guard,remedy) or of the rows"
                    + " that bear on causes (too-wet); all if none is named.")
    private List<String> unheld;

    @Option(
            names = "--by-source",
            description = "Tell, source by source, how often the cause comes first or among the first two, how often"
                    + " every step is among the first four, how often a step does harm, and how far the likelihoods"
                    + " hold.")
    private boolean bySource;

    @Option(
            names = "--fit",
            description = "With --by-source: also fit what the words of strength weigh to these cases, and score each"
                    + " source with weights fitted to all the others. Takes minutes.")
    private boolean fit;

    @Mixin
    private OutputOptions output;

    @Mixin
    private LocalOption local;

    CasesCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        workshop.take(local);
        for (Path folder : folders) {
            if (!Files.isDirectory(folder)) {
                throw new UsageFault("heapwright: there is no folder \"" + folder
                        + "\". Give a folder of cases. Example: heapwright cases cases/published");
            }
            if (fit && Casebook.keptOut(folder)) {
                throw new UsageFault("heapwright: \"" + folder + "\" has cases that nothing is ever fitted to, so that"
                        + " they can measure what was. Name other folders. Example: heapwright cases --by-source --fit"
                        + " cases/fresh cases/published");
            }
        }
        if (fit && !bySource) {
            throw new UsageFault("heapwright: --fit goes with --by-source. Example: heapwright cases --by-source --fit"
                    + " cases/fresh cases/published");
        }
        List<Case> cases = cases();
        if (unheld != null) {
            print(new RuleHolds(workshop.advisor(), cases).of(asked()));
            return Program.OK;
        }
        if (bySource) {
            List<Scored> scored =
                    cases.stream().map(c -> Scored.of(c, workshop.advisor())).toList();
            ScoreReport scores =
                    new ScoreReport(scored, fit ? Optional.of(Fitted.to(scored, workshop)) : Optional.empty());
            terminal.out().print(output.json ? scores.json() : scores.text(terminal.bold()));
            return Program.OK;
        }
        List<Verdict> verdicts =
                cases.stream().map(c -> Verdict.of(c, workshop.advisor())).toList();
        Map<String, Tally> tallies = new TreeMap<>();
        verdicts.forEach(v -> tallies.merge(v.tested().source(), Tally.of(v), Tally::plus));
        if (output.json) {
            terminal.out().println(json(verdicts));
        } else {
            terminal.out().print(text(verdicts, tallies));
        }
        return Program.OK;
    }

    private List<Case> cases() {
        try {
            Casebook casebook = new Casebook(workshop.knowledge());
            return folders.stream().flatMap(f -> casebook.below(f).stream()).toList();
        } catch (CaseFault fault) {
            throw new UsageFault(fault.getMessage());
        }
    }

    private Predicate<RuleInfo> asked() {
        if (unheld.contains(EVERY_PASS)) {
            return rule -> true;
        }
        Set<Pass> passes = EnumSet.noneOf(Pass.class);
        Set<String> rows = new HashSet<>();
        for (String word : unheld) {
            Optional<Cause> cause = Ids.find(Cause.values(), word);
            cause.ifPresentOrElse(
                    c -> workshop.knowledge().evidence().stream()
                            .filter(row -> row.cause() == c)
                            .forEach(row -> rows.add(row.id())),
                    () -> passes.add(Ids.pass(word)));
        }
        return rule -> passes.contains(rule.pass()) || rows.contains(rule.id());
    }

    private void print(List<Hold> holds) {
        List<Hold> loose = holds.stream().filter(h -> h.holder().isEmpty()).toList();
        if (output.json) {
            terminal.out().println(json(holds, loose));
            return;
        }
        Layout page = new Layout(terminal.bold());
        loose.forEach(h -> page.paragraph(
                0,
                4,
                page.strong(h.rule().id()) + " " + h.rule().name() + " ("
                        + h.rule().strength().id() + "; fires in "
                        + (h.firesIn() == 1 ? "1 case" : h.firesIn() + " cases") + ")"));
        page.line(
                0,
                String.format("%d of %d rules and rows are held by a case", holds.size() - loose.size(), holds.size()));
        terminal.out().print(page);
    }

    private static String json(List<Hold> holds, List<Hold> loose) {
        ObjectNode root = JsonText.object("unheld");
        root.put("rules", holds.size());
        root.put("held", holds.size() - loose.size());
        ArrayNode rows = root.putArray("unheld");
        loose.forEach(h -> {
            ObjectNode row = rows.addObject();
            JsonText.rule(row, h.rule());
            row.put("firesIn", h.firesIn());
        });
        return JsonText.write(root);
    }

    private String text(List<Verdict> verdicts, Map<String, Tally> bySource) {
        Layout page = new Layout(terminal.bold());
        for (Verdict verdict : verdicts) {
            if (!verdict.agrees()) {
                page.paragraph(
                        0, 4, verdict.tested().file() + ": " + verdict.tested().says());
                verdict.misses().forEach(miss -> page.paragraph(4, 4, "- " + miss));
            }
        }
        bySource.forEach((source, tally) ->
                page.line(0, String.format("%-14s %3d of %3d agree", source, tally.agree(), tally.all())));
        Tally all = bySource.values().stream().reduce(new Tally(0, 0), Tally::plus);
        page.line(0, String.format("%-14s %3d of %3d agree", "all", all.agree(), all.all()));
        return page.toString();
    }

    private static String json(List<Verdict> verdicts) {
        ObjectNode root = JsonText.object("cases");
        ArrayNode rows = root.putArray("cases");
        for (Verdict verdict : verdicts) {
            ObjectNode row = rows.addObject();
            row.put("file", verdict.tested().file());
            row.put("says", verdict.tested().says());
            row.put("source", verdict.tested().source());
            row.put("row", verdict.tested().row());
            row.put("agrees", verdict.agrees());
            verdict.misses().forEach(row.putArray("misses")::add);
        }
        return JsonText.write(root);
    }

    /** How many cases of a source agree. */
    private record Tally(int agree, int all) {
        static Tally of(Verdict verdict) {
            return new Tally(verdict.agrees() ? 1 : 0, 1);
        }

        Tally plus(Tally other) {
            return new Tally(agree + other.agree, all + other.all);
        }
    }
}
