package heapwright.cli;

import heapwright.advice.Advice;
import heapwright.advice.Afternoon;
import heapwright.advice.Memory;
import heapwright.advice.Step;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.RemedyInfo;
import heapwright.pile.Advised;
import heapwright.report.Catalogue;
import heapwright.report.Days;
import heapwright.report.HarvestDays;
import heapwright.report.HeadlineText;
import heapwright.report.JobText;
import heapwright.report.Words;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Which piles of a folder need a look, and when: danger first, then by day. */
@Command(
        name = DueCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Tells which piles of a folder need a look, and when: danger first, then by day.",
        footerHeading = "%nExample:%n",
        footer = "  heapwright due piles")
final class DueCommand implements Callable<Integer> {

    static final String NAME = "due";

    private static final String ENDING = ".json";

    private final Terminal terminal;
    private final Services workshop;
    private final Clock clock;

    @Parameters(paramLabel = "FOLDER", description = "The folder of pile documents.")
    private String folder;

    @Mixin
    private ShownUnits shown;

    @Mixin
    private LocalOption local;

    DueCommand(Terminal terminal, Services workshop, Clock clock) {
        this.terminal = terminal;
        this.workshop = workshop;
        this.clock = clock;
    }

    /** A line of the list: whether a danger stands, the day to look, if there is one, and the words. */
    private record Line(boolean danger, Optional<LocalDate> day, String text) {}

    @Override
    public Integer call() throws IOException {
        workshop.take(local);
        Knowledge knowledge = workshop.knowledge();
        Words words = new Words(knowledge, Catalogue.english(), shown.units());
        List<Line> lines = new ArrayList<>();
        int unread = 0;
        List<Path> files = files();
        for (Path file : files) {
            try {
                Advice advice = workshop.advisor().diagnose(new PileFile(terminal, knowledge).read(file.toString()));
                lines.add(line(words, file, advice));
                lines.addAll(harvests(words, file, advice));
            } catch (UsageFault fault) {
                unread++;
                terminal.err().println(fault.getMessage());
            }
        }
        lines.sort(Comparator.comparing((Line l) -> !l.danger())
                .thenComparing(l -> l.day().orElse(LocalDate.MAX)));
        lines.forEach(l -> terminal.out().println(l.text()));
        if (files.isEmpty()) {
            throw new UsageFault("heapwright: there is no pile document, a file that ends in .json, in \"" + folder
                    + "\". Example: heapwright due piles");
        }
        return unread == 0 ? Program.OK : Program.BAD_INPUT;
    }

    private List<Line> harvests(Words words, Path file, Advice advice) {
        return new HarvestDays(words)
                .ahead(advice, LocalDate.now(clock)).entrySet().stream()
                        .map(e -> new Line(
                                false,
                                Optional.of(e.getKey()),
                                words.text(
                                        "due.harvest",
                                        new Days(words).of(e.getKey()),
                                        name(file, advice),
                                        e.getValue())))
                        .toList();
    }

    private static String name(Path file, Advice advice) {
        return file.getFileName() + ", " + advice.pile().name();
    }

    private List<Path> files() {
        Path path = FileNames.path(folder);
        if (!Files.isDirectory(path)) {
            throw new UsageFault("heapwright: \"" + folder
                    + "\" is not a folder. Give the folder of your pile documents." + " Example: heapwright due piles");
        }
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(path, "*" + ENDING)) {
            all.forEach(files::add);
        } catch (IOException e) {
            throw new UsageFault("heapwright: \"" + folder + "\" cannot be read: " + e.getMessage());
        }
        files.sort(Comparator.naturalOrder());
        return files;
    }

    private Line line(Words words, Path file, Advice advice) {
        String name = name(file, advice);
        if (advice.alarm().isPresent()) {
            return new Line(true, Optional.empty(), words.text("due.danger", name, new HeadlineText(words).of(advice)));
        }
        Optional<Advised> open =
                advice.pile().advised().stream().filter(a -> a.outcome().open()).reduce((first, second) -> second);
        if (open.isPresent()) {
            return line(words, name, open.get().look(), words.way(Memory.remedy(open.get()), advice.pile()));
        }
        List<Step> jobs = Afternoon.of(advice, words.knowledge()).jobs();
        if (jobs.isEmpty()) {
            return new Line(false, Optional.empty(), words.text("due.nothing", name));
        }
        return line(
                words,
                name,
                JobText.day(jobs.get(0)),
                words.way(jobs.get(0).main().remedy(), advice.pile()));
    }

    private Line line(Words words, String name, LocalDate day, RemedyInfo step) {
        LocalDate today = LocalDate.now(clock);
        String when = new Days(words).of(day);
        return new Line(
                false,
                Optional.of(day),
                words.text(day.isBefore(today) ? "due.overdue" : "due.line", when, name, step.name(), step.expect()));
    }
}
