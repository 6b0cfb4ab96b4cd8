package heapwright.cli;

import heapwright.advice.Advice;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.pile.PileWriter;
import heapwright.report.AdviceJson;
import heapwright.report.FirstPage;
import heapwright.report.TextReport;
import heapwright.report.Words;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The checklist at the terminal: the most telling question first. */
@Command(
        name = AskCommand.NAME,
        mixinStandardHelpOptions = true,
        description = {
            "Asks about a pile at the terminal, the most telling question first, and gives advice.",
            "Answer y, n or ? (don't know); s stops and gives the advice so far."
        },
        footerHeading = "%nExamples:%n",
        footer = {"  heapwright ask", "  heapwright ask --save pile.json"})
final class AskCommand implements Callable<Integer> {

    static final String NAME = "ask";

    private final Terminal terminal;
    private final Services workshop;
    private final Clock clock;

    @Mixin
    private OutputOptions output;

    @Mixin
    private Length length;

    @Option(
            names = "--save",
            paramLabel = "FILE",
            description = "Save the answers as a pile document; an existing file is never overwritten.")
    private Path save;

    @Option(
            names = "--questions",
            paramLabel = "N",
            defaultValue = "12",
            description = "Ask at most N questions (default: ${DEFAULT-VALUE}).")
    private int most;

    @Mixin
    private LocalOption local;

    AskCommand(Terminal terminal, Services workshop, Clock clock) {
        this.terminal = terminal;
        this.workshop = workshop;
        this.clock = clock;
    }

    @Override
    public Integer call() throws IOException {
        if (save != null && Files.exists(save)) {
            throw new UsageFault("heapwright: \"" + save + "\" exists and is not overwritten."
                    + " Give a new name. Example: heapwright ask --save new-pile.json");
        }
        workshop.take(local);
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, output.catalogue(), output.units);
        Interview interview = new Interview(terminal, words, workshop.advisor(), clock);
        Pile pile = interview.run(most);
        Advice advice = workshop.advisor().advise(pile);
        if (output.json) {
            terminal.out().println(new AdviceJson(words, Services.version()).write(advice, false));
        } else {
            terminal.out().println();
            terminal.out()
                    .print(
                            length.full
                                    ? new TextReport(words, terminal.bold()).write(advice)
                                    : new FirstPage(words, terminal.bold()).write(advice));
        }
        if (save != null) {
            write(pile, words);
        }
        return Program.OK;
    }

    private void write(Pile pile, Words words) throws IOException {
        try {
            Files.write(save, new PileWriter().bytes(pile), StandardOpenOption.CREATE_NEW);
            terminal.err().println(words.text("ask.saved", save.toString()));
        } catch (FileAlreadyExistsException e) {
            throw new UsageFault("heapwright: \"" + save + "\" exists meanwhile and is not overwritten.");
        } catch (IOException e) {
            throw new UsageFault("heapwright: \"" + save + "\" cannot be written: " + e.getMessage()
                    + ". Give a path that can. Example: heapwright ask --save pile.json");
        }
    }
}
