package heapwright.cli;

import heapwright.knowledge.Knowledge;
import heapwright.logger.LoggerDays;
import heapwright.pile.Advised;
import heapwright.pile.Pile;
import heapwright.pile.TypedEntry;
import heapwright.report.Catalogue;
import heapwright.report.CourseText;
import heapwright.report.Days;
import heapwright.report.Units;
import heapwright.report.Words;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Notes in a pile's file what was seen, measured, done and added on a day. */
@Command(
        name = NoteCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Notes in a pile's file what was seen, measured, done and added on a day.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  heapwright note pile.json --seen \"soggy, smells sour\" --not-seen steam --core 12",
            "  heapwright note pile.json --done turned-fully --added \"4 wheelbarrow leaves-mixed\"",
            "  heapwright note pile.json --helped --core 21",
            "  heapwright note pile.json --readings logger.csv",
            "  heapwright note pile.json --take-back 2026-11-21",
            "  heapwright note pile.json --on 2026-11-21 --core 54F --text \"first frost\""
        })
final class NoteCommand implements Callable<Integer> {

    static final String NAME = "note";

    private final Terminal terminal;
    private final Services workshop;
    private final Clock clock;

    @Parameters(paramLabel = "FILE", description = "The pile document; it is changed in place.")
    private String file;

    @Option(names = "--on", paramLabel = "DATE", description = "The day, such as 2026-11-21 (default: today).")
    private String on;

    @Mixin
    private NotedSigns signs;

    @Mixin
    private NotedFigures figures;

    @Mixin
    private NotedWork work;

    @Mixin
    private NotedOutcome outcome;

    @Mixin
    private NotedReadings readings;

    @Mixin
    private NotedBack back;

    @Option(names = "--text", paramLabel = "WORDS", description = "Anything else, in your words.", defaultValue = "")
    private String text;

    @Option(
            names = "--units",
            paramLabel = "metric|us",
            defaultValue = "metric",
            description = "Units of figures that name none (default: ${DEFAULT-VALUE}).")
    private Units units;

    @Mixin
    private LocalOption local;

    NoteCommand(Terminal terminal, Services workshop, Clock clock) {
        this.terminal = terminal;
        this.workshop = workshop;
        this.clock = clock;
    }

    @Override
    public Integer call() throws IOException {
        workshop.take(local);
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, Catalogue.english(), units);
        Pile before = new PileFile(terminal, knowledge).read(file);
        NotedSigns.Told told = signs.told(knowledge);
        TypedEntry entry = new TypedEntry(
                day(before),
                told.seen(),
                told.notSeen(),
                figures.measured(units),
                work.done(),
                work.added(),
                work.tested(),
                text);
        List<Advised> steps = outcome.steps(before);
        if (readings.told() || back.told()) {
            if (!entry.empty() || !steps.isEmpty() || readings.told() && back.told()) {
                throw new UsageFault(
                        "heapwright: " + (back.told() ? "--take-back and --put-back go" : "--readings goes")
                                + " by itself. Note the rest with another command. Example: heapwright note " + file
                                + (back.told() ? " --take-back " + entry.date() : " --readings logger.csv"));
            }
            return back.told() ? back(words) : readings(before, words);
        }
        if (entry.empty() && steps.isEmpty()) {
            throw new UsageFault("heapwright: nothing to note. Tell what you saw, measured, did or added."
                    + " Example: heapwright note " + file + " --seen soggy --core 12");
        }
        ChangedFile changed = new ChangedFile(file, knowledge);
        byte[] with = outcome.into(entry.empty() ? changed.bytes() : entry.into(changed.bytes()), steps, entry.date());
        Pile after = changed.write(with);
        List<String> said = new ArrayList<>();
        if (!entry.empty()) {
            after.log().stream()
                    .filter(e -> e.date().equals(entry.date()))
                    .reduce((first, second) -> second)
                    .ifPresent(e -> said.addAll(new CourseText(words).happened(e)));
        }
        after.advised().stream()
                .filter(a -> steps.stream()
                        .anyMatch(s -> s.date().equals(a.date()) && s.step().equals(a.step())))
                .forEach(a -> said.add(new CourseText(words).outcome(a, after)));
        terminal.out().println(words.text("noted", new Days(words).of(entry.date()), String.join("; ", said)));
        terminal.out().println(words.text("noted.next", local.with(file)));
        return Program.OK;
    }

    private int back(Words words) throws IOException {
        ChangedFile changed = new ChangedFile(file, words.knowledge());
        Pile pile = changed.pile();
        NotedBack.Changed with = back.changed(changed.bytes(), pile, words);
        changed.write(with.document());
        terminal.out().println(with.said());
        terminal.out().println(words.text("noted.next", local.with(file)));
        return Program.OK;
    }

    private int readings(Pile before, Words words) throws IOException {
        LoggerDays read = readings.days(before, LocalDate.now(clock), units);
        ChangedFile changed = new ChangedFile(file, words.knowledge());
        changed.write(NotedReadings.into(changed.bytes(), read, words));
        NotedReadings.said(read, words).forEach(terminal.out()::println);
        terminal.out().println(words.text("noted.next", local.with(file)));
        return Program.OK;
    }

    private LocalDate day(Pile pile) {
        LocalDate today = LocalDate.now(clock);
        LocalDate day = on == null ? today : typed(on);
        if (day.isAfter(today)) {
            throw new UsageFault("heapwright: --on " + on + " lies in the future. Note what was, up to today, " + today
                    + ". Example: --on " + today);
        }
        if (day.isBefore(pile.built())) {
            throw new UsageFault("heapwright: " + day + " lies before " + pile.name() + " was built, on " + pile.built()
                    + ". Allowed: from that day to " + today + ".");
        }
        return day;
    }

    private static LocalDate typed(String day) {
        try {
            return LocalDate.parse(day.strip());
        } catch (DateTimeParseException e) {
            throw new UsageFault("heapwright: --on: found \"" + day + "\". Allowed: a day as year-month-day."
                    + " Example: --on 2026-11-21");
        }
    }
}
