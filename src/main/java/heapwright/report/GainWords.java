package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.winter.Gain;
import heapwright.advice.winter.PileNow;
import heapwright.advice.winter.Story;
import heapwright.process.heat.Outlook;
import heapwright.process.heat.Range;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;

/** Puts what a step or another way wins into sentences. */
public final class GainWords {

    private final Words words;
    private final DateTimeFormatter form;

    public GainWords(Words words) {
        this.words = words;
        this.form = DateTimeFormatter.ofPattern("d MMM yyyy", words.catalogue().locale());
    }

    private String date(LocalDate day) {
        return day.format(form);
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
        String least = one(low, above, below, same);
        String most = one(high, above, below, same);
        return words.figures()
                .within(one(likely, above, below, same), least, most, words.text("figure.to", least, most));
    }

    private String one(long figure, String above, String below, String same) {
        return figure == 0
                ? words.text(same)
                : words.text(figure > 0 ? above : below, words.figures().number(Math.abs(figure), 0));
    }

    /** A range of days as "5 (3 to 9)". */
    String days(Range r) {
        return words.figures().count(r);
    }
}
