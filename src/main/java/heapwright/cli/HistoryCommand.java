package heapwright.cli;

import heapwright.knowledge.Knowledge;
import heapwright.report.Catalogue;
import heapwright.report.CourseText;
import heapwright.report.Words;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A pile's record, day by day. */
@Command(
        name = HistoryCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Tells a pile's record day by day: what was measured, done, added and seen.",
        footerHeading = "%nExample:%n",
        footer = "  heapwright history pile.json")
final class HistoryCommand implements Callable<Integer> {

    static final String NAME = "history";

    private final Terminal terminal;
    private final Services workshop;

    @Parameters(paramLabel = "FILE", description = "The pile document; - reads standard input.")
    private String file;

    @Mixin
    private ShownUnits shown;

    @Mixin
    private LocalOption local;

    HistoryCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        workshop.take(local);
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, Catalogue.english(), shown.units());
        terminal.out()
                .print(new CourseText(words).history(new PileFile(terminal, knowledge).read(file), terminal.bold()));
        return Program.OK;
    }
}
