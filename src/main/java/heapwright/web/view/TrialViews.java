package heapwright.web.view;

import heapwright.advice.Option;
import heapwright.advice.WhatIf;
import heapwright.advice.winter.Trial;
import heapwright.process.heat.Bands;
import heapwright.process.heat.CoreReading;
import heapwright.report.DoseWords;
import heapwright.report.WhatIfWords;
import heapwright.report.Words;
import heapwright.web.view.CourseView.Dot;
import heapwright.web.view.TrialView.Chart;
import heapwright.web.view.TrialView.Curve;
import heapwright.web.view.TrialView.Row;
import heapwright.web.view.TrialView.ShownView;
import heapwright.web.view.TrialView.StepView;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Draws the course ahead of a pile with and without steps. */
public final class TrialViews {

    /** So much of the past stands before the course ahead, days. */
    private static final int PAST = 14;

    private static final int WEEK = 7;
    private static final double WARM_C = 40;
    private static final int HEIGHT = 276;

    private final Words words;
    private final WhatIfWords told;
    private final DateTimeFormatter day;

    public TrialViews(Words words) {
        this.words = words;
        this.told = new WhatIfWords(words);
        this.day = DateTimeFormatter.ofPattern("d MMM", words.catalogue().locale());
    }

    /** The steps to tick and what follows from the ticks. */
    public TrialView view(WhatIf whatIf) {
        DoseWords doses = new DoseWords(words);
        List<StepView> steps = new ArrayList<>();
        List<String> others = new ArrayList<>();
        for (WhatIf.Choice choice : whatIf.choices()) {
            Option option = choice.option();
            if (choice.canTry()) {
                String amount = doses.told(option, whatIf.trial().model().pile()).stream()
                        .map(d -> words.text("web.checkup.amount", d.amount(), d.thing(), d.house()))
                        .collect(Collectors.joining("; "));
                steps.add(new StepView(
                        option.remedy().id(),
                        words.way(option.remedy(), whatIf.trial().model().pile())
                                .name(),
                        amount,
                        choice.alternativeTo().isPresent(),
                        whatIf.chosen(option.remedy())));
            } else {
                others.add(words.way(option.remedy(), whatIf.trial().model().pile())
                        .name());
            }
        }
        return new TrialView(steps, others, shown(whatIf));
    }

    /** What follows from the ticks. */
    public ShownView shown(WhatIf whatIf) {
        Trial trial = whatIf.trial();
        return new ShownView(
                told.told(whatIf), chart(whatIf), rows(trial), trial.with().isPresent(), told.premises(whatIf));
    }

    private Chart chart(WhatIf whatIf) {
        Trial trial = whatIf.trial();
        LocalDate today = trial.date(0);
        LocalDate first = trial.date(-Math.min(PAST, trial.model().age()));
        LocalDate last = trial.date(trial.days() - 1);
        Scale scale = new Scale(first, last, lowest(trial), highest(trial));
        return new Chart(
                words.text("web.try.chart", trial.model().pile().name()),
                told.description(whatIf),
                Scale.WIDTH,
                HEIGHT,
                Scale.LEFT,
                Scale.RIGHT,
                Scale.TOP,
                Scale.FLOOR,
                scale.levels(words),
                scale.y(WARM_C),
                scale.y(0),
                scale.ticks(day),
                scale.x(today),
                trial.model().cores().stream()
                        .filter(c -> !trial.model().date(c.day()).isBefore(first))
                        .map(c -> dot(c, trial, scale))
                        .toList(),
                scale.line(trial.outdoor().likely(), today),
                curve(trial.without(), today, scale),
                trial.with().map(w -> curve(w.core(), today, scale)));
    }

    private static double lowest(Trial trial) {
        double low = Math.min(
                Arrays.stream(trial.outdoor().likely()).min().orElse(0),
                Arrays.stream(trial.without().low()).min().orElse(0));
        return trial.with()
                .map(w -> Math.min(low, Arrays.stream(w.core().low()).min().orElse(low)))
                .orElse(low);
    }

    private static double highest(Trial trial) {
        double high = Math.max(
                Arrays.stream(trial.without().high()).max().orElse(WARM_C),
                trial.model().cores().stream()
                        .mapToDouble(CoreReading::celsius)
                        .max()
                        .orElse(0));
        return trial.with()
                .map(w -> Math.max(high, Arrays.stream(w.core().high()).max().orElse(high)))
                .orElse(Math.max(high, WARM_C));
    }

    private Dot dot(CoreReading core, Trial trial, Scale scale) {
        LocalDate date = trial.model().date(core.day());
        String says =
                date.format(day) + ": " + words.text("why.core", words.figures().temperature(core.celsius()));
        return new Dot(scale.x(date), scale.y(core.celsius()), says);
    }

    private static Curve curve(Bands bands, LocalDate from, Scale scale) {
        return new Curve(scale.band(bands, from), scale.line(bands.likely(), from));
    }

    private List<Row> rows(Trial trial) {
        return IntStream.range(0, trial.days())
                .filter(d -> d % WEEK == 0 || d == trial.days() - 1)
                .mapToObj(d -> new Row(
                        trial.date(d).toString(),
                        trial.date(d).format(day),
                        span(trial.without(), d),
                        trial.with().map(w -> span(w.core(), d)).orElse(""),
                        words.figures().temperature(trial.outdoor().likely()[d])))
                .toList();
    }

    private String span(Bands bands, int d) {
        return words.figures().temperature(bands.low()[d], bands.likely()[d], bands.high()[d]);
    }
}
