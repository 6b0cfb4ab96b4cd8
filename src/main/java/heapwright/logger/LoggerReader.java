package heapwright.logger;

import heapwright.logger.LoggerDays.Day;
import heapwright.logger.LoggerDays.Named;
import heapwright.logger.LoggerDays.What;
import heapwright.pile.TemperatureUnit;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.LongStream;

/** Reads a logger's file and tells it by the day: the warmest and the coolest core of each day, and the mean outside. */
public final class LoggerReader {

    /** What a core and the weather can be, °C; as in the pile document. */
    private static final double COLDEST = -60;

    private static final double HOTTEST_CORE = 120;
    private static final double HOTTEST_AIR = 58;

    /** A single figure so far from both its neighbours is a slip of the probe, K (judgement). */
    private static final double JUMP = 25;

    /** Rows this many times as far apart as usual leave a gap (judgement). */
    private static final int GAP = 3;

    private final LoggerSettings told;
    private final Tally tally = new Tally();

    public LoggerReader(LoggerSettings told) {
        this.told = told;
    }

    /** A row: its line, its time at the pile, and what it tells, °C; NaN where it tells nothing. */
    private record Reading(int line, LocalDateTime at, double core, double lowest, double outdoor) {}

    /**
     * Reads a file.
     *
     * @throws LoggerFault where it cannot be used as it is
     */
    public LoggerDays read(byte[] file) {
        Table table = Table.of(text(file));
        Columns columns = Columns.of(table.header());
        Stamps stamps = Stamps.of(
                told,
                columns.universal(),
                table.rows().stream().map(row -> stamp(row, columns)).toList());
        List<Reading> readings = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            reading(row, table, columns, stamps).ifPresent(readings::add);
        }
        if (readings.isEmpty()) {
            throw new LoggerFault("none of its " + table.rows().size() + " rows has a day and a figure that count.");
        }
        inOrder(readings);
        List<Reading> sound = withoutJumps(readings);
        gaps(sound);
        return new LoggerDays(table.rows().size(), days(sound), tally.named());
    }

    private static String text(byte[] file) {
        if (file.length > 1 && (file[0] & 0xFF) == 0xFF && (file[1] & 0xFF) == 0xFE) {
            return new String(file, StandardCharsets.UTF_16);
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(file))
                    .toString();
        } catch (CharacterCodingException e) {
            // Older programs write the degree sign in the alphabet of Western Europe.
            text = new String(file, StandardCharsets.ISO_8859_1);
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static String stamp(Table.Row row, Columns columns) {
        String stamp = row.cell(columns.stamp());
        return columns.clock() < 0 ? stamp : stamp + " " + row.cell(columns.clock());
    }

    private Optional<Reading> reading(Table.Row row, Table table, Columns columns, Stamps stamps) {
        if (row.filled() > table.header().size()) {
            tally.add(What.TOO_MANY_CELLS, row.line());
            return Optional.empty();
        }
        Optional<LocalDateTime> at = stamps.at(stamp(row, columns));
        if (at.isEmpty()) {
            tally.add(What.NO_STAMP, row.line());
            return Optional.empty();
        }
        LocalDate day = at.get().toLocalDate();
        if (day.isAfter(told.to()) || day.isBefore(told.from())) {
            tally.add(day.isAfter(told.to()) ? What.FUTURE : What.BEFORE, row.line());
            return Optional.empty();
        }
        double core = Double.NaN;
        double lowest = Double.NaN;
        for (int column : columns.core()) {
            double one = celsius(row, column, columns, HOTTEST_CORE);
            core = Double.isNaN(core) ? one : Double.isNaN(one) ? core : Math.max(core, one);
            lowest = Double.isNaN(lowest) ? one : Double.isNaN(one) ? lowest : Math.min(lowest, one);
        }
        double sum = 0;
        int count = 0;
        for (int column : columns.outdoor()) {
            double one = celsius(row, column, columns, HOTTEST_AIR);
            if (!Double.isNaN(one)) {
                sum += one;
                count++;
            }
        }
        if (Double.isNaN(core) && count == 0) {
            return Optional.empty();
        }
        return Optional.of(new Reading(row.line(), at.get(), core, lowest, count == 0 ? Double.NaN : sum / count));
    }

    private double celsius(Table.Row row, int column, Columns columns, double hottest) {
        String cell = row.cell(column).strip();
        int end = cell.length();
        while (end > 0 && !Character.isDigit(cell.charAt(end - 1))) {
            end--;
        }
        double value;
        try {
            value = Double.parseDouble(cell.substring(0, end)
                    .replace(',', '.')
                    .replace('\u2212', '-')
                    .strip());
        } catch (NumberFormatException none) {
            tally.add(What.NO_FIGURE, row.line());
            return Double.NaN;
        }
        String unit = cell.substring(end).toLowerCase(java.util.Locale.ROOT);
        boolean inF = unit.contains("f")
                || !unit.contains("c") && columns.fahrenheit().get(column).orElse(told.fahrenheit());
        double celsius = inF ? TemperatureUnit.FAHRENHEIT.to(TemperatureUnit.CELSIUS, value) : value;
        if (celsius < COLDEST || celsius > hottest) {
            tally.add(What.IMPOSSIBLE, row.line());
            return Double.NaN;
        }
        return celsius;
    }

    private void inOrder(List<Reading> readings) {
        for (int i = 1; i < readings.size(); i++) {
            int turned = readings.get(i).at().compareTo(readings.get(i - 1).at());
            if (turned <= 0) {
                tally.add(
                        turned < 0 ? What.OUT_OF_ORDER : What.TWICE,
                        readings.get(i).line());
            }
        }
        readings.sort(Comparator.comparing(Reading::at));
    }

    private List<Reading> withoutJumps(List<Reading> readings) {
        List<Reading> sound = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading one = readings.get(i);
            boolean jumps = i > 0
                    && i + 1 < readings.size()
                    && jumps(
                            readings.get(i - 1).core(),
                            one.core(),
                            readings.get(i + 1).core());
            if (jumps) {
                tally.add(What.JUMP, one.line());
            }
            sound.add(jumps ? new Reading(one.line(), one.at(), Double.NaN, Double.NaN, one.outdoor()) : one);
        }
        return sound;
    }

    private static boolean jumps(double before, double core, double after) {
        return Math.abs(core - before) > JUMP && Math.abs(core - after) > JUMP && (core > before) == (core > after);
    }

    private void gaps(List<Reading> readings) {
        long[] steps = new long[Math.max(0, readings.size() - 1)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = Duration.between(
                            readings.get(i).at(), readings.get(i + 1).at())
                    .toSeconds();
        }
        long[] sorted = LongStream.of(steps).filter(s -> s > 0).sorted().toArray();
        if (sorted.length == 0) {
            return;
        }
        long usual = sorted[sorted.length / 2];
        int longest = -1;
        for (int i = 0; i < steps.length; i++) {
            if (steps[i] > usual * GAP) {
                longest = longest < 0 || steps[i] > steps[longest] ? i : longest;
                tally.add(What.GAP, 0);
            }
        }
        if (longest >= 0) {
            tally.where(
                    What.GAP,
                    readings.get(longest).at().toString().replace('T', ' ') + " – "
                            + readings.get(longest + 1).at().toString().replace('T', ' '));
        }
    }

    private static List<Day> days(List<Reading> readings) {
        TreeMap<LocalDate, List<Reading>> byDay = new TreeMap<>();
        readings.forEach(r -> byDay.computeIfAbsent(r.at().toLocalDate(), day -> new ArrayList<>())
                .add(r));
        List<Day> days = new ArrayList<>();
        byDay.forEach((date, rows) -> {
            OptionalDouble core = rows.stream()
                    .mapToDouble(Reading::core)
                    .filter(c -> !Double.isNaN(c))
                    .max();
            OptionalDouble lowest = rows.stream()
                    .mapToDouble(Reading::lowest)
                    .filter(c -> !Double.isNaN(c))
                    .min();
            OptionalDouble outdoor = rows.stream()
                    .mapToDouble(Reading::outdoor)
                    .filter(c -> !Double.isNaN(c))
                    .average();
            if (core.isPresent() || outdoor.isPresent()) {
                days.add(new Day(date, core, lowest, outdoor, rows.size()));
            }
        });
        return days;
    }

    /** Counts what is to be told. */
    private static final class Tally {
        private final TreeMap<What, Named> all = new TreeMap<>();

        void add(What what, int line) {
            Named before = all.get(what);
            all.put(
                    what,
                    before == null
                            ? new Named(what, 1, String.valueOf(line))
                            : new Named(what, before.count() + 1, before.where()));
        }

        void where(What what, String where) {
            all.computeIfPresent(what, (w, named) -> new Named(w, named.count(), where));
        }

        List<Named> named() {
            return List.copyOf(all.values());
        }
    }
}
