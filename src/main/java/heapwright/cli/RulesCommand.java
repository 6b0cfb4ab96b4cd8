package heapwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.engine.RuleInfo;
import heapwright.report.JsonText;
import heapwright.report.Layout;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists the rules and the rows of evidence with what each says of itself. */
@Command(
        name = RulesCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Lists the rules and the rows of evidence, each with strength, source and reason.",
        footerHeading = "%nExamples:%n",
        footer = {"  heapwright rules", "  heapwright rules weigh"})
final class RulesCommand implements Callable<Integer> {

    static final String NAME = "rules";

    private final Terminal terminal;
    private final Workshop workshop;

    @Parameters(paramLabel = "PASS", arity = "0..1", description = "derive, weigh, conclude, remedy, guard or arrange.")
    private String pass;

    @Mixin
    private OutputOptions output;

    RulesCommand(Terminal terminal, Workshop workshop) {
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
        if (output.json) {
            terminal.out().println(json(rules));
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
        }
        terminal.out().print(page);
        return Program.OK;
    }

    private static String json(List<RuleInfo> rules) {
        ObjectNode root = JsonText.object("rules");
        ArrayNode rows = root.putArray("rules");
        rules.forEach(r -> JsonText.rule(rows.addObject(), r));
        return JsonText.write(root);
    }
}
