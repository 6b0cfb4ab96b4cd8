package heapwright.cli;

import heapwright.advice.danger.Alarm;
import heapwright.advice.season.YearRound;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.pile.Place;
import heapwright.report.SeasonJson;
import heapwright.report.SeasonReport;
import heapwright.report.Words;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What there is to do at this time of the year and the next, or in all of it. */
@Command(
        name = SeasonCommand.NAME,
        mixinStandardHelpOptions = true,
        description =
                "Tells what there is to do now and next round the pile, the scraps, the leaves and the beds, by the usual warmth of the months.",
        footerHeading = "%nExamples:%n",
        footer = {"  heapwright season", "  heapwright season --full pile.json"})
final class SeasonCommand implements Callable<Integer> {

    static final String NAME = "season";

    private final Terminal terminal;
    private final Services workshop;
    private final Clock clock;

    @Parameters(
            paramLabel = "FILE",
            arity = "0..1",
            description = "The pile document, for its place and kind; - reads standard input. Without it, a usual"
                    + " year with a cold winter.")
    private String file;

    @Mixin
    private OutputOptions output;

    @Mixin
    private LocalOption local;

    @Mixin
    private Length length;

    SeasonCommand(Terminal terminal, Services workshop, Clock clock) {
        this.terminal = terminal;
        this.workshop = workshop;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        workshop.take(local);
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, output.catalogue(), output.units);
        Optional<Pile> pile = Optional.ofNullable(file).map(new PileFile(terminal, knowledge)::read);
        terminal.out()
                .print(pile.flatMap(p -> workshop.advisor().diagnose(p).alarm().map(a -> alarmed(words, p, a)))
                        .orElseGet(() -> answer(words, pile)));
        return Program.OK;
    }

    private String alarmed(Words words, Pile pile, Alarm alarm) {
        return output.json
                ? new SeasonJson(words, Services.version()).alarmed(pile, alarm, LocalDate.now(clock))
                : new SeasonReport(words, terminal.bold()).alarmed(pile, alarm);
    }

    private String answer(Words words, Optional<Pile> pile) {
        LocalDate day = LocalDate.now(clock);
        YearRound year = YearRound.of(
                pile.map(Pile::place).orElseGet(Place::unknown),
                pile.map(p -> p.container().kind()).orElse(Container.Kind.UNKNOWN),
                day,
                words.knowledge());
        if (output.json) {
            return new SeasonJson(words, Services.version()).write(year, pile, day);
        }
        SeasonReport report = new SeasonReport(words, terminal.bold());
        return length.full ? report.full(year, pile, day) : report.first(year, pile, day);
    }
}
