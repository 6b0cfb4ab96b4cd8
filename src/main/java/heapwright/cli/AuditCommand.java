package heapwright.cli;

import heapwright.advice.Forecaster;
import heapwright.advice.audit.Audit;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.report.AuditJson;
import heapwright.report.AuditReport;
import heapwright.report.AuditTable;
import heapwright.report.FirstPageOfAudit;
import heapwright.report.Words;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The numbers of a recipe before it is built. */
@Command(
        name = AuditCommand.NAME,
        mixinStandardHelpOptions = true,
        description =
                "Audits a recipe before it is built: what must stay out, the numbers, what puts it right, the plan.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  heapwright audit recipe.json",
            "  heapwright audit --table recipe.json",
            "  heapwright audit --my-ratio 33 recipe.json"
        })
final class AuditCommand implements Callable<Integer> {

    static final String NAME = "audit";

    private final Terminal terminal;
    private final Services workshop;

    @Parameters(paramLabel = "FILE", description = "The pile document with the recipe; - reads standard input.")
    private String file;

    @Mixin
    private OutputOptions output;

    @Mixin
    private LocalOption local;

    @Mixin
    private Length length;

    @Option(names = "--table", description = "Write only the numbers, as a plain table.")
    private boolean table;

    @Option(
            names = "--my-ratio",
            paramLabel = "C:N",
            description = "The C:N you worked out yourself; the audit explains the gap where it can.")
    private Double ownRatio;

    AuditCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        workshop.take(local);
        if (ownRatio != null && !(ownRatio > 0 && Double.isFinite(ownRatio))) {
            throw new UsageFault(
                    "heapwright: --my-ratio " + ownRatio + ": a C:N is a number above 0. Example: --my-ratio 33");
        }
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, output.catalogue(), output.units);
        Pile pile = new PileFile(terminal, knowledge).read(file);
        OptionalDouble own = ownRatio == null ? OptionalDouble.empty() : OptionalDouble.of(ownRatio);
        Audit audit = workshop.auditor()
                .audit(pile, own)
                .map(new Forecaster(knowledge)::ready)
                .orElseThrow(
                        () -> new UsageFault(
                                "heapwright: " + file
                                        + ": there is no recipe to audit. Add /recipe, a list of materials with amount and unit."
                                        + " Example: \"recipe\": [{\"material\": \"leaves-mixed\", \"amount\": 6, \"unit\": \"bucket\"}]"));
        if (output.json) {
            terminal.out().println(new AuditJson(words, Services.version()).write(audit));
        } else if (table && audit.alarm().isEmpty()) {
            terminal.out().print(new AuditTable(words).write(audit));
        } else {
            terminal.out()
                    .print(
                            length.full
                                    ? new AuditReport(words, terminal.bold()).write(audit)
                                    : new FirstPageOfAudit(words, terminal.bold()).write(audit));
        }
        return Program.OK;
    }
}
