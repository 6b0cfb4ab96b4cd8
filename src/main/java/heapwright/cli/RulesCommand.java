package heapwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.engine.RuleInfo;
import heapwright.casebook.Case;
import heapwright.casebook.RuleCases;
import heapwright.report.JsonText;
import heapwright.report.Layout;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the rules and the rows of evidence with what each says of itself. */
@Command(
        name = RulesCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Lists the rules and the rows of evidence, each with strength, source and reason.",
        footerHeading = "%nExamples:%n",
        footer = {"  heapwright rules", "  heapwright rules weigh", "  heapwright rules --cases cases guard"})
final class RulesCommand implements Callable<Integer> {

    static final String NAME = "rules";

    /** As many files as a line or two hold; the JSON has them all. */
    private static final int FEW = 4;

    private final Terminal terminal;
    private final Services workshop;

    @Parameters(paramLabel = "PASS", arity = "0..1", description = "derive, weigh, conclude, remedy, guard or arrange.")
    private String pass;

    @Option(
            names = "--cases",
            paramLabel = "FOLDER",
            description = "Also name the cases of this folder in which each speaks, but for those in unfitted.")
    private Path folder;

    @Mixin
    private OutputOptions output;

    RulesCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        List<RuleInfo> rules = workshop.advisor().rules().stream()
                .filter(r -> pass == null || r.pass().id().equals(pass))
                .toList();
        if (rules.isEmpty()) {
            throw new UsageFault("heapwright: there is no pass \"" + pass
                    + "\". Allowed: derive, weigh, conclude, remedy, guard, arrange. Example: heapwright rules weigh");
        }
        Optional<Map<String, List<Case>>> cases = Optional.ofNullable(folder).map(this::cases);
        if (output.json) {
            terminal.out().println(json(rules, cases));
            return Program.OK;
        }
        Layout page = new Layout(terminal.bold());
        for (RuleInfo rule : rules) {
            page.paragraph(0, 4, page.strong(rule.id()) + " " + rule.name());
            page.paragraph(
                    4,
                    0,
                    rule.strength().id() + "; "
                            + output.catalogue().text("known." + rule.evidence().id()) + ", " + rule.source() + ". "
                            + rule.rationale());
            cases.ifPresent(all -> page.paragraph(
                    4,
                    0,
                    output.catalogue().text("rules.cases", files(all, rule).size(), few(files(all, rule)))));
        }
        terminal.out().print(page);
        return Program.OK;
    }

    private Map<String, List<Case>> cases(Path below) {
        return RuleCases.of(workshop.advisor(), CaseFiles.open(workshop.knowledge(), below));
    }

    private static List<String> files(Map<String, List<Case>> cases, RuleInfo rule) {
        return cases.getOrDefault(rule.id(), List.of()).stream().map(Case::file).toList();
    }

    private static String few(List<String> files) {
        return String.join(", ", files.subList(0, Math.min(FEW, files.size()))) + (files.size() > FEW ? " …" : "");
    }

    private static String json(List<RuleInfo> rules, Optional<Map<String, List<Case>>> cases) {
        ObjectNode root = JsonText.object("rules");
        ArrayNode rows = root.putArray("rules");
        rules.forEach(r -> {
            ObjectNode row = rows.addObject();
            JsonText.rule(row, r);
            cases.ifPresent(all -> files(all, r).forEach(row.putArray("cases")::add));
        });
        return JsonText.write(root);
    }
}
