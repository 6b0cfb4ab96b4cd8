package heapwright.cli;

import heapwright.advice.Advice;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.report.AdviceJson;
import heapwright.report.FirstPage;
import heapwright.report.TextReport;
import heapwright.report.TraceReport;
import heapwright.report.Words;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is wrong with a pile, and what to do first. */
@Command(
        name = CheckupCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Tells what is most likely wrong with a pile, what to do first and how much of what.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  heapwright checkup pile.json",
            "  heapwright checkup --full pile.json",
            "  heapwright checkup --units us pile.json",
            "  heapwright checkup --json - < pile.json",
            "  heapwright checkup --why-not frozen-in pile.json"
        })
final class CheckupCommand implements Callable<Integer> {

    static final String NAME = "checkup";

    private final Terminal terminal;
    private final Workshop workshop;

    @Parameters(paramLabel = "FILE", description = "The pile document; - reads standard input.")
    private String file;

    @Mixin
    private OutputOptions output;

    @Mixin
    private Length length;

    @Option(names = "--trace", description = "Show every rule that fired, on what and with what result.")
    private boolean trace;

    @Option(names = "--why-not", paramLabel = "CAUSE", description = "Show what spoke for and against one cause.")
    private String whyNot;

    CheckupCommand(Terminal terminal, Workshop workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, output.catalogue(), output.units);
        Pile pile = new PileFile(terminal, knowledge).read(file);
        Advice advice = workshop.advisor().advise(pile);
        if (whyNot != null) {
            terminal.out().print(new TraceReport(words).whyNot(advice, Ids.cause(whyNot)));
        } else if (output.json) {
            terminal.out().println(new AdviceJson(words, Workshop.version()).write(advice, trace));
        } else {
            terminal.out()
                    .print(
                            length.full || trace
                                    ? new TextReport(words, terminal.bold()).write(advice)
                                    : new FirstPage(words, terminal.bold()).write(advice));
            if (trace) {
                terminal.out().print(new TraceReport(words).whole(advice));
            }
        }
        return Program.OK;
    }
}
