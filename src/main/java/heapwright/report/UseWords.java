package heapwright.report;

import heapwright.advice.ready.Cover;
import heapwright.advice.ready.ReadyAnswer;
import heapwright.advice.ready.ReadyDates;
import heapwright.advice.ready.TestPlan;
import heapwright.knowledge.HomeTestInfo;
import heapwright.knowledge.RipeReasonInfo;
import heapwright.knowledge.Ripeness;
import heapwright.knowledge.UseInfo;
import heapwright.pile.HomeTest;
import heapwright.pile.Pile;
import heapwright.process.climate.LocalYear;
import heapwright.process.use.Layer;
import heapwright.process.use.TestResults;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The sentences on whether compost is ready, how to test it, how far it goes and when. */
public final class UseWords {

    private static final double CM_PER_INCH = 2.54;
    private static final int EIGHTHS = 8;
    private static final List<String> FRACTIONS = List.of("", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞");

    /** The mean of a year below which summers are taken as cool, °C (judgement). */
    private static final double COOL_YEAR_C = 10;

    private final Words words;
    private final ModelWords dates;

    public UseWords(Words words) {
        this.words = words;
        this.dates = new ModelWords(words);
    }

    /** The title. */
    public String title(Pile pile) {
        return words.text("ready.title", pile.name(), dates.date(pile.asOf()));
    }

    /** The verdict and how sure it is. */
    public String headline(ReadyAnswer answer) {
        boolean held = answer.held();
        String grade =
                words.text(held ? "ready.held" : "ready.grade." + answer.grade().id());
        return words.text(
                "ready.headline",
                grade,
                words.text("ready.sure." + answer.sure().id()));
    }

    /** The line that a checkup carries. */
    public String line(ReadyAnswer answer) {
        return words.text(
                "ready.line", words.text("ready.grade." + answer.grade().id()));
    }

    /** A reason and what to do then. */
    public String reason(RipeReasonInfo reason) {
        return reason.says() + " " + reason.then();
    }

    /** A reason with who says so. */
    public String reasonInFull(RipeReasonInfo reason) {
        return words.text(
                "ready.reason-full",
                reason(reason),
                words.text("known." + reason.known().id()),
                String.join(", ", reason.sources()));
    }

    /** What speaks against each other. */
    public String atOdds(ReadyAnswer.AtOdds odds) {
        return words.text("ready.odds." + odds.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** When to do a test: the day to begin, and the days to read it. */
    public String days(TestPlan plan) {
        String name = plan.test().name();
        if (plan.test().toDays() == 0) {
            return plan.again()
                    ? words.text("ready.test-again-on", name, dates.date(plan.start()))
                    : words.text("ready.test-any-day", name);
        }
        String read = plan.from().equals(plan.to())
                ? dates.date(plan.from())
                : words.text("ready.from-to", dates.date(plan.from()), dates.date(plan.to()));
        return words.text(plan.again() ? "ready.test-again" : "ready.test", name, dates.date(plan.start()), read);
    }

    /** How a test is read. */
    public String readings(HomeTestInfo test) {
        return test.readings().stream()
                .map(r -> words.text(
                        "ready.reading",
                        words.text("tested.result." + r.result().token()),
                        r.reads(),
                        words.text("ready.for." + r.allows().id())))
                .collect(Collectors.joining("; "));
    }

    /** What a test needs, and who says so. */
    public String needs(HomeTestInfo test) {
        return words.text("ready.needs", test.needs(), test.tells());
    }

    public String rests(HomeTestInfo test) {
        return words.text("ready.rests", words.text("known." + test.known().id()), String.join(", ", test.sources()));
    }

    /** The latest result of each test, the first in the document's order first. */
    public List<String> results(ReadyAnswer answer) {
        List<String> all = new ArrayList<>();
        for (HomeTest test : HomeTest.values()) {
            TestResults.OnDay result = answer.results().get(test);
            if (result != null) {
                all.add(words.text(
                        result.counts() ? "ready.result" : "ready.result-old",
                        words.knowledge().endUse().tests().get(test).name(),
                        words.text("tested.result." + result.result().token()),
                        dates.date(result.day())));
            }
        }
        return all;
    }

    /** How much there is, and where that is from. */
    public String left(ReadyAnswer answer) {
        Figures figures = words.figures();
        return words.text(
                "ready.left."
                        + answer.left().from().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                figures.volume(answer.left().litres().likely()),
                figures.volume(
                        answer.left().litres().low(), answer.left().litres().high()));
    }

    /** The uses that fit the climate, those that it may go to first. */
    public List<Cover> fitting(ReadyAnswer answer) {
        double mean = LocalYear.of(answer.pile().place()).meanC().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(0);
        UseInfo.Climate other = mean < COOL_YEAR_C ? UseInfo.Climate.WARM : UseInfo.Climate.COOL;
        return answer.covers().stream().filter(c -> c.use().climate() != other).toList();
    }

    /** A use with its amount, and how far the compost goes. */
    public String cover(Cover cover) {
        UseInfo use = cover.use();
        if (cover.areaM2().isPresent()) {
            return words.text(
                    "ready.cover",
                    use.name(),
                    amount(use),
                    words.figures()
                            .area(
                                    cover.areaM2().get().likely(),
                                    cover.areaM2().get().likely()));
        }
        return cover.mixLitres()
                .map(m -> words.text(
                        "ready.mix", use.name(), amount(use), words.figures().volume(m.likely())))
                .orElseGet(() -> words.text("ready.none", use.name()));
    }

    /** How much: a depth with its litres on a square metre, or a share. */
    public String amount(UseInfo use) {
        return switch (use.kind()) {
            case DEPTH -> words.text("ready.amount", depth(use.usual()), spread(use.usual()));
            case SHARE -> words.text("ready.share", use.usual());
            case NONE -> words.text("ready.amount-none");
        };
    }

    /** The least and the most of a use. */
    public String range(UseInfo use) {
        return switch (use.kind()) {
            case DEPTH -> words.figures().span(depth(use.low()), depth(use.high()));
            case SHARE -> words.text("ready.share-range", use.low(), use.high());
            case NONE -> "";
        };
    }

    private String depth(double cm) {
        return words.figures().units() == Units.US
                ? inches(cm / CM_PER_INCH) + " in"
                : words.figures().number(cm, cm < 10 && cm != Math.rint(cm) ? 1 : 0) + " cm";
    }

    /** To an eighth, as on a rule: 1½. */
    private String inches(double inches) {
        long eighths = Math.max(1, Math.round(inches * EIGHTHS));
        String whole = eighths < EIGHTHS ? "" : words.figures().number(Math.floorDiv(eighths, (long) EIGHTHS), 0);
        return whole + FRACTIONS.get((int) (eighths % EIGHTHS));
    }

    private String spread(double cm) {
        Layer layer = new Layer(cm);
        return words.figures().units() == Units.US
                ? words.text("ready.per-100-ft2", words.figures().round(layer.cubicFeetPer100SquareFeet()))
                : words.text("ready.per-m2", words.figures().round(layer.litresPerM2()));
    }

    /** What else is said of a use, and who says so. */
    public String note(UseInfo use) {
        return words.text(
                "ready.note", use.note(), words.text("known." + use.known().id()), String.join(", ", use.sources()));
    }

    /** The days that matter, one a line. */
    public List<String> dates(ReadyAnswer answer) {
        ReadyDates days = answer.dates();
        List<String> all = new ArrayList<>();
        days.curingEnds().ifPresent(d -> all.add(words.text("ready.date.curing", dates.date(d))));
        days.walnutEnds().ifPresent(d -> all.add(words.text("ready.date.walnut", dates.date(d))));
        days.manureEnds().ifPresent(d -> all.add(words.text("ready.date.manure", dates.date(d))));
        LocalDate spread = days.spreadFrom();
        if (answer.grade() != Ripeness.NOT_YET && spread.isAfter(answer.pile().asOf())) {
            all.add(words.text(
                    days.yearKnown() == LocalYear.Known.ASSUMED ? "ready.date.thaw-assumed" : "ready.date.thaw",
                    dates.date(spread)));
        }
        if (days.harvestTouchingSoil().isPresent()
                && (days.spreadOn().isPresent() || answer.grade() != Ripeness.NOT_YET)) {
            all.add(words.text(
                    days.spreadOn().isPresent() ? "ready.date.harvest-spread" : "ready.date.harvest",
                    dates.date(days.spreadOn().orElse(spread)),
                    dates.date(days.harvestTouchingSoil().get()),
                    dates.date(days.harvestOthers().orElseThrow())));
        }
        return all;
    }
}
