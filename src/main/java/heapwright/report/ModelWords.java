package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.WhyAnswer;
import heapwright.advice.fact.ModelSays;
import heapwright.advice.winter.Ahead;
import heapwright.advice.winter.Climate;
import heapwright.advice.winter.Factor;
import heapwright.advice.winter.Gain;
import heapwright.advice.winter.Hindsight;
import heapwright.advice.winter.PileModel;
import heapwright.advice.winter.PileNow;
import heapwright.advice.winter.Plan;
import heapwright.advice.winter.Story;
import heapwright.advice.winter.Verdict;
import heapwright.process.heat.Outlook;
import heapwright.process.heat.Range;
import heapwright.process.heat.Retrace;
import heapwright.process.heat.Stretch;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts what the process model says into sentences. */
public final class ModelWords {

    private static final int TOLD = 8;
    private static final double SLOWED = 0.6;
    /** Twice the error that reviewed models made at the maximum (MASON06, abstract published). */
    private static final double CLEARLY_WARMER_K = 10;

    private static final int LEAST_DAYS = 2;

    private final Words words;
    private final DateTimeFormatter form;

    public ModelWords(Words words) {
        this.words = words;
        this.form = DateTimeFormatter.ofPattern("d MMM yyyy", words.catalogue().locale());
    }

    String date(LocalDate day) {
        return day.format(form);
    }

    /** The answer in a sentence or two. */
    public String answer(WhyAnswer answer) {
        boolean besides = answer.verdict() == Verdict.SOMETHING_WRONG && !answer.colder();
        boolean colder = answer.verdict() == Verdict.JUST_WINTER && answer.colder();
        String key = "why.verdict." + answer.verdict().id() + (besides ? ".besides" : colder ? ".colder" : "");
        return answer.cause()
                .map(c -> words.text(key) + " " + words.text("why.rests-on", words.cause(c)) + otherwise(answer))
                .orElseGet(() ->
                        words.text(key) + " " + words.text("why.by-model", words.word("factor", answer.factor())));
    }

    /** That the temperatures alone would say another thing, and which to trust. */
    private String otherwise(WhyAnswer answer) {
        return answer.temperatures()
                .map(said -> " "
                        + words.text(
                                "why.temperatures-say",
                                words.text("why.temperatures." + said.id()),
                                words.text("why.trust")))
                .orElse("");
    }

    /** The letter that stands for a factor in a strip. */
    public String letter(Factor factor) {
        return words.text("factor.letter." + factor.id());
    }

    /** What the letters of a strip stand for, each once, in a sentence. */
    public String letters(List<CourseView.Held> strip) {
        String told = strip.stream()
                .map(CourseView.Held::factor)
                .distinct()
                .map(f -> letter(f) + " " + words.word("factor", f))
                .collect(Collectors.joining(", "));
        return words.text("sketch.legend-held", told);
    }

    /** What the temperatures say by themselves. */
    public String temperatures(Story s) {
        int day = s.telling().day();
        double low = s.healthy().low()[day];
        double high = s.healthy().high()[day];
        double core = s.telling().celsius();
        String band = words.figures()
                .span(words.figures().temperature(low), words.figures().temperature(high));
        String said = words.text(
                "why.beside-healthy", date(s.model().date(day)), words.figures().temperature(core), band);
        return said + " "
                + words.text(
                        s.shortfallC() > 0 ? "why.short" : "why.within",
                        words.figures().temperatureDifference(s.shortfallC()))
                + tooCold(s);
    }

    /** Where the pile was clearly warmer than the band, the model is at fault and not the pile, and that is said. */
    private String tooCold(Story s) {
        double[] high = s.healthy().high();
        return s.model().cores().stream()
                .filter(c -> c.celsius() - high[c.day()] > CLEARLY_WARMER_K)
                .max(Comparator.comparingDouble(c -> c.celsius() - high[c.day()]))
                .map(c -> " "
                        + words.text(
                                "why.model-too-cold",
                                date(s.model().date(c.day())),
                                words.figures().temperatureDifference(c.celsius() - high[c.day()])))
                .orElse("");
    }

    /** When it stalled; nothing of a pile that is warm, works or has finished. */
    public List<String> stall(Advice advice) {
        Optional<Story> told = advice.story()
                .filter(s -> advice.why()
                        .filter(w -> w.verdict() == Verdict.WORKING || w.verdict() == Verdict.FINISHED)
                        .isEmpty());
        return told.map(this::stalled).orElse(List.of());
    }

    private List<String> stalled(Story story) {
        return story.stalledOn().isEmpty()
                ? List.of()
                : List.of(
                        story.stalledOn().getAsInt() == 0
                                ? words.text("why.never-warm")
                                : words.text(
                                        "why.stalled",
                                        date(story.model()
                                                .date(story.stalledOn().getAsInt())),
                                        words.figures().temperature(Retrace.STALLED_C)));
    }

    /** What held it back when, in lines; short stretches are left out, and no more than eight are told. */
    public List<String> stretches(Story story) {
        List<String> all = new ArrayList<>();
        for (Stretch s : story.past().stretches()) {
            if (s.to() - s.from() + 1 >= LEAST_DAYS && all.size() < TOLD) {
                Factor factor = Factor.of(s.factor());
                String line = words.text(
                        "why.stretch",
                        date(story.model().date(s.from())),
                        date(story.model().date(s.to())),
                        words.word("factor", factor),
                        words.figures().number(100 * s.value(), 0),
                        words.figures().temperatureDifference(Math.abs(s.colderThanHealthy())),
                        words.text(s.colderThanHealthy() >= 0 ? "why.colder" : "why.warmer"));
                all.add(
                        s.rateBias() < SLOWED
                                ? line + " "
                                        + words.text(
                                                "why.unexplained",
                                                words.figures().number(100 * s.rateBias(), 0))
                                : line);
            }
        }
        return all;
    }

    /** What another choice at building would have changed. */
    public String hindsight(Hindsight h) {
        return words.text(
                "why.hindsight",
                words.word("choice", h.choice()),
                days(h.moreWarmDays()),
                words.figures().temperature(Outlook.WARM_C),
                words.figures().temperatureDifference(h.warmerC().likely()));
    }

    /**
     * What a step buys: when the core is back at 40 °C with and without it, and the days won. Empty where the model cannot
     * tell; what it cannot tell of any step is said once, see {@link #ofAllSteps}.
     */
    Optional<String> gain(Gain gain, LocalDate today) {
        if (!gain.tells()) {
            return Optional.empty();
        }
        String forty = words.figures().temperature(Outlook.WARM_C);
        if (gain.uncounted()) {
            return Optional.of(words.text("gain.back", forty, days(gain.with().days())) + "; "
                    + (gain.asleep()
                            ? words.text("gain.without-asleep", date(today.plusDays(gain.days())))
                            : words.text("gain.without-never") + "."));
        }
        String won = words.text("gain.won", days(gain.daysWon()), gain.days());
        return Optional.of(
                gain.with().already() || !gain.with().likely() ? won : back(gain, forty, today) + ". " + won);
    }

    private String back(Gain gain, String forty, LocalDate today) {
        String with = words.text("gain.back", forty, days(gain.with().days()));
        String without = gain.without().likely()
                ? words.text(
                        "gain.without",
                        date(today.plusDays(Math.round(gain.without().days().likely()))))
                : words.text("gain.without-never");
        return with + "; " + without;
    }

    /**
     * Once for all steps of an advice: that the model does not fit this pile, that it freezes through whatever is done, or
     * that none of those tried is likely to bring the core back to 40 °C.
     */
    public List<String> ofAllSteps(Advice advice) {
        Optional<PileNow> now = advice.story().map(Story::now);
        if (now.isEmpty() || advice.alarm().isPresent()) {
            return List.of();
        }
        if (!now.get().fits()) {
            return List.of(misfit(now.get().missK()));
        }
        List<Gain> gains =
                advice.steps().stream().flatMap(s -> s.main().gain().stream()).toList();
        return none(gains, advice.pile().asOf()).stream().toList();
    }

    /** That none of some steps or ways can win anything; empty where one can, and where none was tried. */
    Optional<String> none(List<Gain> gains, LocalDate from) {
        if (gains.isEmpty()
                || gains.stream().anyMatch(g -> g.with().likely() || g.with().already())) {
            return Optional.empty();
        }
        String until = date(from.plusDays(gains.get(0).days()));
        return Optional.of(
                gains.stream().allMatch(Gain::iced)
                        ? words.text("gain.iced", until)
                        : words.text("gain.none-warms", words.figures().temperature(Outlook.WARM_C), until));
    }

    /** That the model is not one of a pile. */
    String misfit(double missK) {
        return words.text("model.misfit", words.figures().temperatureDifference(Math.abs(missK)));
    }

    /** More of something as "5 (3 to 9) more", less of it as fewer: a loss never reads as a gain. */
    String more(Range days) {
        return either(days, "model.more", "model.fewer", "model.as-many");
    }

    /** Days won as "5 (3 to 9) days sooner", days lost as later. */
    String sooner(Range days) {
        return either(days, "model.sooner", "model.later", "model.as-soon");
    }

    private String either(Range r, String above, String below, String same) {
        long low = Math.round(r.low());
        long likely = Math.round(r.likely());
        long high = Math.round(r.high());
        if (low >= 0 && high > 0) {
            return words.text(above, days(r));
        }
        if (high <= 0 && low < 0) {
            return words.text(below, days(new Range(-r.high(), -r.likely(), -r.low())));
        }
        if (low == 0 && high == 0) {
            return words.text(same);
        }
        String span = words.text("model.between", one(low, above, below, same), one(high, above, below, same));
        return one(likely, above, below, same) + " " + span;
    }

    private String one(long figure, String above, String below, String same) {
        return figure == 0
                ? words.text(same)
                : words.text(figure > 0 ? above : below, words.figures().number(Math.abs(figure), 0));
    }

    /** A range of days as "5 (3–9)". */
    String days(Range r) {
        String low = words.figures().number(r.low(), 0);
        String high = words.figures().number(r.high(), 0);
        String likely = words.figures().number(r.likely(), 0);
        return low.equals(high) ? likely : likely + " (" + words.text("model.to", low, high) + ")";
    }

    /** What the model takes for granted. */
    List<String> premises(PileModel model) {
        List<String> all = new ArrayList<>();
        words.assumed(model.pile()).ifPresent(all::add);
        Climate climate = model.climate();
        all.add(words.text(
                "climate." + climate.known().name().toLowerCase(java.util.Locale.ROOT),
                words.text("climate.latitude." + model.pile().place().climate().token())));
        if (model.typical()) {
            all.add(words.text("model.typical"));
        }
        if (!model.marks().isEmpty()) {
            all.add(words.text("model.marks"));
        }
        all.add(words.text("model.aid"));
        return all;
    }

    /** A plan in words. */
    String plan(Ahead.PlanOutcome plan, LocalDate first) {
        String key = "plan." + plan.plan().id();
        return words.text(
                key,
                date(first.plusDays(plan.day())),
                plan.day(),
                words.figures().depth(Plan.INSULATION_CM));
    }

    /** What the model told the rules. */
    static String fact(Words words, ModelSays said) {
        return words.text("model.says." + said.says().id(), words.figures().temperatureDifference(said.shortfallC()));
    }
}
