package heapwright.cli;

import heapwright.advice.Advice;
import heapwright.advice.danger.Alarm;
import heapwright.advice.ready.Ready;
import heapwright.advice.ready.ReadyAnswer;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.report.FirstPageOfReady;
import heapwright.report.ReadyJson;
import heapwright.report.ReadyReport;
import heapwright.report.Words;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Whether the compost is ready, for what, how to test it, how far it goes and when. */
@Command(
        name = ReadyCommand.NAME,
        mixinStandardHelpOptions = true,
        description =
                "Tells whether the compost is ready and for what, which home tests would tell more, how much there is and what it covers, and the days to wait for.",
        footerHeading = "%nExamples:%n",
        footer = {"  heapwright ready pile.json", "  heapwright ready --full pile.json"})
final class ReadyCommand implements Callable<Integer> {

    static final String NAME = "ready";

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

    ReadyCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        workshop.take(local);
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, output.catalogue(), output.units);
        Pile pile = new PileFile(terminal, knowledge).read(file);
        Advice advice = workshop.advisor().diagnose(pile);
        terminal.out().print(advice.alarm().map(a -> alarmed(words, pile, a)).orElseGet(() -> answer(words, advice)));
        return Program.OK;
    }

    private String alarmed(Words words, Pile pile, Alarm alarm) {
        return output.json
                ? new ReadyJson(words, Services.version()).alarmed(pile, alarm)
                : new FirstPageOfReady(words, terminal.bold()).alarmed(pile, alarm);
    }

    private String answer(Words words, Advice advice) {
        ReadyAnswer answer = Ready.of(advice, words.knowledge());
        if (output.json) {
            return new ReadyJson(words, Services.version()).write(answer);
        }
        return length.full
                ? new ReadyReport(words, terminal.bold()).write(answer)
                : new FirstPageOfReady(words, terminal.bold()).write(answer);
    }
}
