package heapwright.cli;

import heapwright.advice.Advice;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.report.AdviceJson;
import heapwright.report.WhyReport;
import heapwright.report.Words;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Why a pile has stopped. */
@Command(
        name = "why",
        mixinStandardHelpOptions = true,
        description = "Tells why a pile has stopped: its course by day, and each finding with its evidence.",
        footerHeading = "%nExample:%n",
        footer = "  heapwright why pile.json")
final class WhyCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Workshop workshop;

    @Parameters(paramLabel = "FILE", description = "The pile document; - reads standard input.")
    private String file;

    @Mixin
    private OutputOptions output;

    WhyCommand(Terminal terminal, Workshop workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        workshop.warmUp();
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, output.catalogue(), output.units);
        Pile pile = new PileFile(terminal, knowledge).read(file);
        Advice advice = workshop.advisor().advise(pile);
        if (output.json) {
            terminal.out().println(new AdviceJson(words, Workshop.version()).write(advice, true));
        } else {
            terminal.out().print(new WhyReport(words, terminal.bold()).write(advice));
        }
        return Program.OK;
    }
}
