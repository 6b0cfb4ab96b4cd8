package heapwright.cli;

import heapwright.advice.Forecaster;
import heapwright.advice.danger.Alarm;
import heapwright.advice.winter.PileOutlook;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.report.FirstPageOfOutlook;
import heapwright.report.ModelJson;
import heapwright.report.OutlookReport;
import heapwright.report.Words;
import heapwright.web.view.CoursePicture;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The winter ahead of a pile. */
@Command(
        name = OutlookCommand.NAME,
        mixinStandardHelpOptions = true,
        description =
                "Tells how a pile is likely to get through the winter, when it will be ready, and what other ways would gain.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  heapwright outlook pile.json",
            "  heapwright outlook --chart winter.svg pile.json",
            "  heapwright outlook --typical pile.json"
        })
final class OutlookCommand implements Callable<Integer> {

    static final String NAME = "outlook";

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

    @Option(names = "--typical", description = "Where the file has no recipe, take a usual mix; the ranges get wide.")
    private boolean typical;

    OutlookCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        workshop.take(local);
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, output.catalogue(), output.units);
        Pile pile = new PileFile(terminal, knowledge).read(file);
        Optional<Alarm> alarm = workshop.watch().of(pile);
        if (alarm.isPresent()) {
            terminal.out()
                    .print(
                            output.json
                                    ? new ModelJson(words, Services.version()).alarmed(pile, alarm.get()) + "\n"
                                    : length.full
                                            ? new OutlookReport(words, terminal.bold()).alarmed(pile, alarm.get())
                                            : new FirstPageOfOutlook(words, terminal.bold())
                                                    .alarmed(pile, alarm.get()));
            return Program.OK;
        }
        Forecaster forecaster = new Forecaster(knowledge);
        PileOutlook ahead = forecaster
                .ahead(pile)
                .or(() -> typical ? forecaster.aheadOfTypical(pile) : Optional.empty())
                .orElseThrow(() -> new UsageFault("heapwright: " + file + ": "
                        + words.word("unmodelled", forecaster.lacking(pile).orElseThrow())));
        OutlookReport report = new OutlookReport(words, terminal.bold());
        if (chart != null) {
            new ChartFile(chart).write(new CoursePicture(words).of(ahead, report.headline(ahead)));
        }
        if (output.json) {
            terminal.out().println(new ModelJson(words, Services.version()).outlook(ahead));
        } else {
            terminal.out()
                    .print(
                            length.full
                                    ? report.write(ahead)
                                    : new FirstPageOfOutlook(words, terminal.bold()).write(ahead));
        }
        return Program.OK;
    }
}
