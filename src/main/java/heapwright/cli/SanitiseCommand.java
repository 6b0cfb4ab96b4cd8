package heapwright.cli;

import heapwright.advice.danger.Alarm;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.process.sanitation.HeatLedger;
import heapwright.report.FirstPageOfSanitation;
import heapwright.report.SanitationJson;
import heapwright.report.SanitationReport;
import heapwright.report.Words;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** How hot the core was for how long, beside published rules and trials. */
@Command(
        name = SanitiseCommand.NAME,
        mixinStandardHelpOptions = true,
        description =
                "Tells from the record how hot the core was for how long, rule by rule, and what that means for weeds, disease and germs.",
        footerHeading = "%nExamples:%n",
        footer = {"  heapwright sanitise pile.json", "  heapwright sanitise --full pile.json"})
final class SanitiseCommand implements Callable<Integer> {

    static final String NAME = "sanitise";

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

    SanitiseCommand(Terminal terminal, Services workshop) {
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
        terminal.out().print(alarm.map(a -> alarmed(words, pile, a)).orElseGet(() -> ledger(words, pile)));
        return Program.OK;
    }

    private String alarmed(Words words, Pile pile, Alarm alarm) {
        return output.json
                ? new SanitationJson(words, Services.version()).alarmed(pile, alarm)
                : new FirstPageOfSanitation(words, terminal.bold()).alarmed(pile, alarm);
    }

    private String ledger(Words words, Pile pile) {
        HeatLedger ledger = HeatLedger.of(pile, words.knowledge());
        if (output.json) {
            return new SanitationJson(words, Services.version()).write(pile, ledger);
        }
        return length.full
                ? new SanitationReport(words, terminal.bold()).write(pile, ledger)
                : new FirstPageOfSanitation(words, terminal.bold()).write(pile, ledger);
    }
}
