package heapwright.cli;

import heapwright.advice.Advice;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Advised;
import heapwright.pile.AdvisedDocument;
import heapwright.pile.Pile;
import heapwright.report.AdviceJson;
import heapwright.report.Days;
import heapwright.report.FirstPage;
import heapwright.report.KeptAdvice;
import heapwright.report.TextReport;
import heapwright.report.TraceReport;
import heapwright.report.Words;
import java.io.IOException;
import java.util.List;
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
            "  heapwright checkup --keep pile.json",
            "  heapwright checkup --units us pile.json",
            "  heapwright checkup --json - < pile.json",
            "  heapwright checkup --why-not frozen-in pile.json"
        })
final class CheckupCommand implements Callable<Integer> {

    static final String NAME = "checkup";

    private final Terminal terminal;
    private final Services workshop;

    @Parameters(paramLabel = "FILE", description = "The pile document; - reads standard input.")
    private String file;

    @Mixin
    private OutputOptions output;

    @Mixin
    private LocalOption local;

    @Mixin
    private Length length;

    @Option(names = "--trace", description = "Show every rule that fired, on what and with what result.")
    private boolean trace;

    @Option(
            names = "--keep",
            description = "Take on the afternoon's work: note it in the file, to ask later whether it helped.")
    private boolean keep;

    @Option(names = "--why-not", paramLabel = "CAUSE", description = "Show what spoke for and against one cause.")
    private String whyNot;

    CheckupCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws IOException {
        workshop.take(local);
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, output.catalogue(), output.units);
        Pile pile = new PileFile(terminal, knowledge).read(file);
        boolean whole = length.full || trace || output.json || whyNot != null;
        Advice advice = workshop.advisor().adviseAsking(pile, told -> whole || FirstPage.asks(told));
        if (whyNot != null) {
            terminal.out().print(new TraceReport(words).whyNot(advice, Ids.cause(whyNot)));
        } else if (output.json) {
            terminal.out().println(new AdviceJson(words, Services.version()).write(advice, trace));
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
        if (keep) {
            keep(advice, words);
        }
        return Program.OK;
    }

    /** Takes on the afternoon's work; while a danger stands there is none to keep. */
    private void keep(Advice advice, Words words) throws IOException {
        List<Advised> steps = new KeptAdvice(words).of(advice);
        if (steps.isEmpty()) {
            terminal.err().println(words.text("kept.nothing"));
            return;
        }
        ChangedFile changed = new ChangedFile(file, words.knowledge());
        changed.write(new AdvisedDocument(changed.bytes()).keeping(steps).bytes());
        terminal.err()
                .println(words.text("kept", new Days(words).of(steps.get(0).look())));
    }
}
