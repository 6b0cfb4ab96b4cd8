package heapwright.cli;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.winter.Story;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.report.AdviceJson;
import heapwright.report.FirstPageOfWhy;
import heapwright.report.WhyReport;
import heapwright.report.Words;
import heapwright.web.view.CoursePicture;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Why a pile has stopped. */
@Command(
        name = WhyCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Tells why a pile has stopped: its course by day, and each finding with its evidence.",
        footerHeading = "%nExamples:%n",
        footer = {"  heapwright why pile.json", "  heapwright why --chart course.svg pile.json"})
final class WhyCommand implements Callable<Integer> {

    static final String NAME = "why";

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

    @Option(names = "--chart", paramLabel = "FILE.svg", description = "Draw the course as a picture in this file too.")
    private String chart;

    WhyCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        workshop.take(local);
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, output.catalogue(), output.units);
        Pile pile = new PileFile(terminal, knowledge).read(file);
        // The page of text asks nothing; working out what to ask is a third of the work.
        Advisor advisor = workshop.advisor();
        Advice advice = output.json ? advisor.advise(pile) : advisor.diagnose(pile);
        if (chart != null && advice.alarm().isEmpty()) {
            Story story = advice.story()
                    .orElseThrow(() -> new UsageFault("heapwright: " + file
                            + ": there is no course to draw. A chart needs a recipe and a measured core temperature."
                            + " Example: \"measured\": {\"core\": {\"value\": 22, \"unit\": \"C\"}}"));
            new ChartFile(chart).write(new CoursePicture(words).of(story));
        }
        if (output.json) {
            terminal.out().println(new AdviceJson(words, Services.version()).write(advice, true));
        } else {
            terminal.out()
                    .print(
                            length.full
                                    ? new WhyReport(words, terminal.bold()).write(advice)
                                    : new FirstPageOfWhy(words, terminal.bold()).write(advice));
        }
        return Program.OK;
    }
}
