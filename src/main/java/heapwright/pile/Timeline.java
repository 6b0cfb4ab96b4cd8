package heapwright.pile;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The day a pile was built and the day of advice, as stated or taken from the other dates of the document, and the span
 * that these leave for those other dates.
 */
final class Timeline {

    private final LocalDate built;
    private final LocalDate asOf;
    private final boolean builtStated;
    private final boolean assumed;
    private final boolean sound;

    private Timeline(LocalDate built, LocalDate asOf, boolean builtStated, boolean assumed, boolean sound) {
        this.built = built;
        this.asOf = asOf;
        this.builtStated = builtStated;
        this.assumed = assumed;
        this.sound = sound;
    }

    LocalDate built() {
        return built;
    }

    LocalDate asOf() {
        return asOf;
    }

    /** The same for what counts no more: its days may lie anywhere. */
    Timeline loose() {
        return new Timeline(built, asOf, builtStated, assumed, false);
    }

    /** Whether the day it was built is a guess. */
    boolean assumed() {
        return assumed;
    }

    /**
     * Looks at every date first, because each may rest on any other. Dates that cannot be read are passed over here:
     * whoever reads their section reports them.
     */
    static Timeline of(Section pile, List<Note> notes) {
        List<Node> nodes = new ArrayList<>();
        collect(pile, "recipe", nodes);
        collect(pile, "log", nodes);
        collect(pile, "advised", nodes);
        List<LocalDate> dates = new ArrayList<>();
        nodes.forEach(node -> Dates.of(node).ifPresent(dates::add));
        Optional<LocalDate> built = pile.date("built");
        Optional<LocalDate> asOf = pile.date("asOf");
        boolean none = nodes.isEmpty()
                && pile.field("built").isEmpty()
                && pile.field("asOf").isEmpty();
        if (none) {
            pile.needed("asOf", "the day for which advice is wanted, as no other date is given", Dates.EXAMPLE);
        }
        built.ifPresent(dates::add);
        LocalDate last = asOf.orElseGet(() -> dates.isEmpty() ? Dates.LAST : Collections.max(dates));
        dates.add(last);
        LocalDate earliest = built.orElseGet(() -> Collections.min(dates));
        boolean assumed = pile.field("built").isEmpty() && standsUndated(pile);
        LocalDate first = assumed ? Pile.assumedBuilt(earliest) : earliest;
        if (pile.field("asOf").isEmpty()) {
            notes.add(new Note("/asOf", "Taken as " + last + ", the latest date in the file."));
        }
        if (pile.field("built").isEmpty()) {
            String why =
                    assumed ? "about a month before the earliest date in the file." : "the earliest date in the file.";
            notes.add(new Note("/built", "Taken as " + first + ", " + why));
        }
        if (first.isAfter(last)) {
            pile.field("built")
                    .ifPresent(node -> pile.findings()
                            .wrong(
                                    node,
                                    node.shown() + ", after the day of advice",
                                    "a day up to asOf, " + last,
                                    Shown.quoted(last.toString())));
        }
        boolean unread = none
                || pile.field("built").isPresent() && built.isEmpty()
                || pile.field("asOf").isPresent() && asOf.isEmpty();
        return new Timeline(first, last, built.isPresent(), assumed, !unread && !first.isAfter(last));
    }

    /**
     * Whether the document is that of a pile that stands and tells nowhere when it was built: no ingredient of its recipe
     * has a date. A recipe without a log is one that is yet to be built.
     */
    private static boolean standsUndated(Section pile) {
        List<Node> dates = new ArrayList<>();
        collect(pile, "recipe", dates);
        return dates.isEmpty() && (some(pile, "log") || !some(pile, "recipe"));
    }

    private static boolean some(Section pile, String list) {
        return pile.field(list)
                .filter(node -> node instanceof Node.Arr all && !all.items().isEmpty())
                .isPresent();
    }

    /** A date field of the pile's history, which cannot lie before the pile was built nor after the day of advice. */
    Optional<LocalDate> past(Section section, String field) {
        Optional<LocalDate> date = section.date(field);
        date.ifPresent(day -> {
            if (sound && (day.isBefore(built) || day.isAfter(asOf))) {
                String why = day.isAfter(asOf) ? "after the day of advice" : "before the pile was built";
                String from = builtStated ? "from " + built + " " : "";
                report(section, field, why, "a day " + from + "up to " + asOf);
            }
        });
        return date;
    }

    /** A date field that cannot lie before the pile was built. */
    Optional<LocalDate> wish(Section section, String field) {
        Optional<LocalDate> date = section.date(field);
        if (sound && date.isPresent() && date.get().isBefore(built)) {
            report(section, field, "before the pile was built", "a day from " + built + " on");
        }
        return date;
    }

    private void report(Section section, String field, String why, String allowed) {
        section.field(field)
                .ifPresent(node -> section.findings()
                        .wrong(node, node.shown() + ", " + why, allowed, Shown.quoted(asOf.toString())));
    }

    private static void collect(Section pile, String list, List<Node> dates) {
        pile.field(list).ifPresent(node -> collect(node, dates));
    }

    private static void collect(Node list, List<Node> dates) {
        if (!(list instanceof Node.Arr items)) {
            return;
        }
        for (Node item : items.items()) {
            if (item instanceof Node.Obj object) {
                Optional.ofNullable(object.fields().get("date")).ifPresent(dates::add);
                Optional.ofNullable(object.fields().get("told")).ifPresent(dates::add);
                Optional.ofNullable(object.fields().get("added")).ifPresent(added -> collect(added, dates));
            }
        }
    }
}
