package heapwright.cli;

import heapwright.logger.LoggerDays;
import heapwright.logger.LoggerFault;
import heapwright.logger.LoggerReader;
import heapwright.logger.LoggerSettings;
import heapwright.pile.LoggedDays;
import heapwright.pile.Pile;
import heapwright.report.Days;
import heapwright.report.Units;
import heapwright.report.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The file of a temperature logger, noted by the day. */
final class NotedReadings {

    @Option(
            names = "--readings",
            paramLabel = "LOGGER.csv",
            description = "A logger's file: each day's warmest and coolest core and mean outside go into the record.")
    private String file;

    @Option(names = "--zone", paramLabel = "ZONE", description = "Where the pile stands, if the times are in UTC.")
    private String zone;

    @Option(
            names = "--dates",
            paramLabel = "day-first|month-first",
            description = "How 03/04 is meant, if the file leaves it open.")
    private String dates;

    boolean told() {
        if (file == null && (zone != null || dates != null)) {
            throw new UsageFault("heapwright: --zone and --dates go with --readings."
                    + " Example: heapwright note pile.json --readings logger.csv --zone Europe/Helsinki");
        }
        return file != null;
    }

    /**
     * Reads the file.
     *
     * @throws UsageFault where it cannot be used as it is
     */
    LoggerDays days(Pile pile, LocalDate today, Units units) {
        LoggerSettings told = new LoggerSettings(zone(), dayFirst(), units == Units.US, from(pile), today);
        try {
            return new LoggerReader(told).read(Files.readAllBytes(FileNames.path(file)));
        } catch (LoggerFault fault) {
            throw new UsageFault("heapwright: --readings " + file + ": " + fault.getMessage());
        } catch (IOException e) {
            throw new UsageFault("heapwright: --readings: \"" + file + "\" cannot be read as a file."
                    + " Give the path of the file that the logger wrote. Example: --readings logger.csv");
        }
    }

    /** A pile of unknown age may be as old as its logger. */
    private static LocalDate from(Pile pile) {
        return pile.builtAssumed() ? LocalDate.of(1990, 1, 1) : pile.built();
    }

    private Optional<ZoneId> zone() {
        try {
            return Optional.ofNullable(zone).map(z -> ZoneId.of(z.strip()));
        } catch (DateTimeException e) {
            throw new UsageFault(
                    "heapwright: --zone: found \"" + zone + "\". Allowed: the name of a time zone, or hours"
                            + " from UTC. Example: --zone Europe/Helsinki, or --zone +02:00");
        }
    }

    private Optional<Boolean> dayFirst() {
        if (dates != null && !List.of("day-first", "month-first").contains(dates)) {
            throw new UsageFault("heapwright: --dates: found \"" + dates
                    + "\". Allowed: day-first, month-first. Example: --dates day-first");
        }
        return Optional.ofNullable(dates).map("day-first"::equals);
    }

    /** The document with the days. */
    static byte[] into(byte[] document, LoggerDays read, Words words) throws IOException {
        List<LoggedDays.Day> days = read.days().stream()
                .map(d -> new LoggedDays.Day(
                        d.date(), d.coreC(), d.lowestC(), d.outdoorC(), words.text("readings.rows", d.rows())))
                .toList();
        return new LoggedDays(days, words.text("readings.note")).into(document);
    }

    /** What went in, and what was left out, doubtful or missing. */
    static List<String> said(LoggerDays read, Words words) {
        List<String> said = new ArrayList<>();
        List<LoggerDays.Day> days = read.days();
        Days day = new Days(words);
        said.add(words.text(
                "readings.in",
                read.rows(),
                days.size(),
                day.of(days.get(0).date()),
                day.of(days.get(days.size() - 1).date())));
        read.named()
                .forEach(n -> said.add(words.text(
                        "readings." + n.what().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                        n.count(),
                        n.where())));
        return said;
    }
}
