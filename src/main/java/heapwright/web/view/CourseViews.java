package heapwright.web.view;

import heapwright.advice.winter.PileOutlook;
import heapwright.advice.winter.Story;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo.Sense;
import heapwright.pile.Action;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import heapwright.report.CourseText;
import heapwright.report.Words;
import heapwright.web.view.CourseView.Dot;
import heapwright.web.view.CourseView.Event;
import heapwright.web.view.CourseView.Kind;
import heapwright.web.view.CourseView.Row;
import heapwright.web.view.CourseView.Strip;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Draws the course of a pile from its record. */
public final class CourseViews {

    private static final Set<Action> TURNINGS = Set.of(Action.TURNED_FULLY, Action.LOOSENED, Action.HOLES_MADE);
    private static final int LANE_TOP = 284;
    private static final int LANE_STEP = 20;

    private final Words words;
    private final DateTimeFormatter day;

    public CourseViews(Words words) {
        this.words = words;
        this.day = DateTimeFormatter.ofPattern("d MMM", words.catalogue().locale());
    }

    /**
     * The course of a pile.
     *
     * @param pile the pile
     * @param story what the process model says of its past, if it can
     */
    public CourseView view(Pile pile, Optional<Story> story) {
        Scale scale = Scale.of(pile, story.map(Story::healthy));
        List<Dot> core = dots(pile, Measured::coreC, scale, "why.core");
        List<Dot> outdoor = dots(pile, Measured::outdoorC, scale, "why.outdoor");
        Strip strip = story.map(heapwright.report.CourseView::of)
                .map(s -> new Strips(words).of(s, scale))
                .orElseGet(Strips::none);
        return new CourseView(
                words.text("web.course.title", pile.name()),
                description(pile),
                Scale.WIDTH,
                Scale.HEIGHT + (strip.held().isEmpty() ? 0 : Strips.ROOM),
                Scale.LEFT,
                Scale.RIGHT,
                scale.levels(words),
                scale.y(0),
                scale.ticks(day),
                story.map(s -> scale.band(s.healthy(), s.model().date(0))).orElse(""),
                line(core),
                line(outdoor),
                core,
                outdoor,
                events(pile, scale),
                strip,
                pile.log().stream().map(e -> row(e, pile)).toList());
    }

    /**
     * The course that lies ahead of a pile; nothing of it is measured, and it has no table.
     *
     * @param description the same in words
     */
    public CourseView view(PileOutlook ahead, String description) {
        heapwright.report.CourseView course = heapwright.report.CourseView.of(ahead);
        LocalDate first = course.first();
        Scale scale = new Scale(first, first.plusDays(course.days() - 1L), course.lowest(), course.highest());
        Strip strip = new Strips(words).of(course, scale);
        return new CourseView(
                words.text("chart.title-ahead", ahead.now().model().pile().name()),
                description,
                Scale.WIDTH,
                Scale.HEIGHT + (strip.held().isEmpty() ? 0 : Strips.ROOM),
                Scale.LEFT,
                Scale.RIGHT,
                scale.levels(words),
                scale.y(0),
                scale.ticks(day),
                scale.band(course.core(), first),
                scale.line(course.core().likely(), first),
                scale.line(course.outdoor(), first),
                List.of(),
                List.of(),
                List.of(),
                strip,
                List.of());
    }

    private String description(Pile pile) {
        List<Entry> cores = pile.log().stream()
                .filter(e -> e.measured().coreC().isPresent())
                .toList();
        if (cores.isEmpty()) {
            return words.text("web.course.nothing");
        }
        Entry warmest =
                cores.stream().reduce((a, b) -> core(b) > core(a) ? b : a).orElseThrow();
        Entry last = cores.get(cores.size() - 1);
        long turnings = pile.log().stream()
                .filter(e -> e.done().stream().anyMatch(TURNINGS::contains))
                .count();
        return words.text(
                "web.course.description",
                words.figures().temperature(core(warmest)),
                warmest.date().format(day),
                words.figures().temperature(core(last)),
                last.date().format(day),
                turnings);
    }

    private static double core(Entry entry) {
        return entry.measured().coreC().getAsDouble();
    }

    private List<Dot> dots(Pile pile, Function<Measured, OptionalDouble> what, Scale scale, String key) {
        List<Dot> dots = new ArrayList<>();
        for (Entry entry : pile.log()) {
            OptionalDouble value = what.apply(entry.measured());
            if (value.isPresent()) {
                dots.add(new Dot(
                        scale.x(entry.date()),
                        scale.y(value.getAsDouble()),
                        entry.date().format(day) + ": "
                                + words.text(key, words.figures().temperature(value.getAsDouble()))));
            }
        }
        return dots;
    }

    private static String line(List<Dot> dots) {
        return dots.stream().map(d -> d.x() + "," + d.y()).collect(Collectors.joining(" "));
    }

    private List<Event> events(Pile pile, Scale scale) {
        List<Event> events = new ArrayList<>();
        for (Entry entry : pile.log()) {
            String x = scale.x(entry.date());
            String date = entry.date().format(day) + ": ";
            List<String> turned = entry.done().stream()
                    .filter(TURNINGS::contains)
                    .map(this::action)
                    .toList();
            if (!turned.isEmpty()) {
                events.add(new Event(x, lane(Kind.TURNED), Kind.TURNED, date + String.join(", ", turned)));
            }
            if (!entry.added().isEmpty()) {
                events.add(new Event(x, lane(Kind.ADDED), Kind.ADDED, date + added(entry)));
            }
            List<String> smells = shortNames(entry, Optional.of(Sense.NOSE));
            if (!smells.isEmpty()) {
                events.add(new Event(x, lane(Kind.SMELT), Kind.SMELT, date + String.join(", ", smells)));
            }
        }
        return events;
    }

    private static String lane(Kind kind) {
        return Integer.toString(LANE_TOP + kind.ordinal() * LANE_STEP);
    }

    private String action(Action action) {
        return words.text("action." + action.token());
    }

    private String added(Entry entry) {
        return entry.added().stream().map(this::ingredient).collect(Collectors.joining(", "));
    }

    private String ingredient(Ingredient one) {
        return words.knowledge().material(one.material()).map(words::thing).orElse(one.material());
    }

    private List<String> shortNames(Entry entry, Optional<Sense> sense) {
        return words.knowledge().signs().values().stream()
                .filter(s -> sense.isEmpty() || s.sense() == sense.get())
                .filter(s -> entry.seen().contains(s.id().id()))
                .map(s -> s.shortName())
                .toList();
    }

    private Row row(Entry entry, Pile pile) {
        List<String> noticed = new ArrayList<>(shortNames(entry, Optional.empty()));
        Arrays.stream(Sign.values())
                .filter(s -> entry.notSeen().contains(s.id()))
                .forEach(s -> noticed.add(
                        words.text("why.not", words.knowledge().signs().get(s).shortName())));
        List<String> done = new ArrayList<>();
        entry.done().forEach(a -> done.add(action(a)));
        CourseText text = new CourseText(words);
        entry.added().forEach(one -> done.add(words.text("why.added", text.added(one))));
        done.addAll(text.tests(entry));
        LocalDate date = entry.date();
        return new Row(
                date.toString(),
                date.format(day),
                ChronoUnit.DAYS.between(pile.built(), date),
                temperature(entry.measured().coreC()),
                temperature(entry.measured().outdoorC()),
                String.join("; ", noticed),
                String.join("; ", done),
                entry.note());
    }

    private String temperature(OptionalDouble celsius) {
        return celsius.isPresent() ? words.figures().temperature(celsius.getAsDouble()) : "";
    }
}
