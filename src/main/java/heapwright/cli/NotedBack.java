package heapwright.cli;

import heapwright.journal.Noting;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import heapwright.pile.StruckDocument;
import heapwright.report.CourseText;
import heapwright.report.Days;
import heapwright.report.Words;
import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** A note that is taken back, or put back: named by its day, and by its number where the day has several. */
final class NotedBack {

    private static final Pattern NAMED = Pattern.compile("([^#]+?)\\s*(?:#\\s*([1-9][0-9]{0,3}))?");

    @Option(
            names = "--take-back",
            paramLabel = "DATE[#N]",
            description = "Takes back the note of that day; it counts no longer and is kept in the file.")
    private String taken;

    @Option(names = "--put-back", paramLabel = "DATE[#N]", description = "Puts back a note that was taken back.")
    private String put;

    /** Whether a note is to be taken back or put back. */
    boolean told() {
        if (taken != null && put != null) {
            throw new UsageFault("heapwright: --take-back and --put-back go one at a time."
                    + " Example: heapwright note pile.json --take-back 2026-11-21");
        }
        return taken != null || put != null;
    }

    /** The document afterwards, and what to say of it. */
    record Changed(byte[] document, String said) {}

    /**
     * Takes the note back, or puts it back.
     *
     * @throws UsageFault where no such note is there, or several are and none of them was named
     */
    Changed changed(byte[] document, Pile pile, Words words) throws IOException {
        boolean takes = taken != null;
        String flag = takes ? "--take-back" : "--put-back";
        Matcher named = NAMED.matcher((takes ? taken : put).strip());
        LocalDate day = day(flag, named);
        List<Entry> all = takes ? pile.log() : pile.struck();
        List<Entry> ofDay = all.stream().filter(e -> e.date().equals(day)).toList();
        int number = number(flag, named, day, ofDay, all, words);
        Entry entry = ofDay.get(number);
        String mark = Noting.mark(entry);
        LocalDate asOf = (takes ? Noting.struck(pile, mark) : Noting.restored(pile, mark)).asOf();
        StruckDocument struck = new StruckDocument(document);
        return new Changed(
                takes ? struck.without(day, number, asOf) : struck.with(day, number, asOf),
                words.text(takes ? "noted.taken-back" : "noted.put-back", new Days(words).of(day), told(entry, words)));
    }

    private static LocalDate day(String flag, Matcher named) {
        try {
            if (named.matches()) {
                return LocalDate.parse(named.group(1));
            }
        } catch (DateTimeParseException e) {
            // Told below.
        }
        throw new UsageFault("heapwright: " + flag + ": allowed is the day of a note, year-month-day, and its number"
                + " where the day has several. Example: " + flag + " 2026-11-21, or " + flag + " \"2026-11-21#2\"");
    }

    private static int number(
            String flag, Matcher named, LocalDate day, List<Entry> ofDay, List<Entry> all, Words words) {
        OptionalInt told =
                named.group(2) == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(named.group(2)));
        if (ofDay.isEmpty()) {
            String days = all.isEmpty()
                    ? "There is none."
                    : "Allowed: "
                            + String.join(
                                    ", ",
                                    all.stream()
                                            .map(e -> e.date().toString())
                                            .distinct()
                                            .toList())
                            + ".";
            throw new UsageFault("heapwright: " + flag + ": no such note of " + day + ". " + days);
        }
        int number = told.orElse(ofDay.size() == 1 ? 1 : 0);
        if (number < 1 || number > ofDay.size()) {
            List<String> lines = new ArrayList<>();
            for (int i = 0; i < ofDay.size(); i++) {
                lines.add("  " + day + "#" + (i + 1) + ": " + told(ofDay.get(i), words));
            }
            throw new UsageFault("heapwright: " + flag + ": " + day + " has " + ofDay.size()
                    + " notes. Name one of them:\n" + String.join("\n", lines) + "\nExample: " + flag + " \"" + day
                    + "#1\"");
        }
        return number - 1;
    }

    private static String told(Entry entry, Words words) {
        List<String> told = new ArrayList<>(new CourseText(words).happened(entry));
        if (!entry.note().isBlank()) {
            told.add(entry.note().strip());
        }
        return String.join("; ", told);
    }
}
