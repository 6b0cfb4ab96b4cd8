package heapwright.report;

import heapwright.advice.WhatIf;
import heapwright.advice.winter.Gain;
import heapwright.advice.winter.Trial;
import heapwright.process.heat.Range;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts what chosen steps would do into sentences. */
public final class WhatIfWords {

    private static final double WARM_C = 40;

    private final Words words;
    private final ModelWords model;
    private final GainWords gains;

    public WhatIfWords(Words words) {
        this.words = words;
        this.model = new ModelWords(words);
        this.gains = new GainWords(words);
    }

    /** What the chosen steps would do, the answer first; where none is reckoned, what lies ahead without. */
    public List<String> told(WhatIf whatIf) {
        List<String> all = new ArrayList<>();
        Trial trial = whatIf.trial();
        if (!trial.fits()) {
            all.add(gains.misfit(trial.missK()));
        } else if (trial.with().isEmpty()) {
            all.add(words.text("whatif.none"));
        } else {
            Trial.With with = trial.with().get();
            int steps = whatIf.together().size();
            all.add(answer(trial, with.gain(), steps));
            all.add(warmth(trial, with.gain().warmerC().likely()));
            all.add(pace(trial, with.gain(), steps));
            all.add(words.text("whatif.done", steps));
            if (with.openedOnce()) {
                all.add(words.text("whatif.one-opening"));
            }
        }
        whatIf.left().forEach(l -> all.add(left(l)));
        return all;
    }

    /** When the core is back at 40 °C with the steps, and when without. */
    private String answer(Trial trial, Gain gain, int steps) {
        String forty = words.figures().temperature(WARM_C);
        if (gain.with().already()) {
            return words.text("whatif.already", forty, steps, gains.more(gain.moreWarmDays()), model.date(end(trial)));
        }
        if (!gain.with().likely() && !gain.without().likely()) {
            return words.text("whatif.neither", steps, forty, model.date(end(trial)));
        }
        String with = gain.with().likely()
                ? words.text("whatif.with", steps, forty, days(gain.with().days(), trial.days()))
                : words.text("whatif.with-not", steps, forty, model.date(end(trial)));
        String without = gain.without().likely()
                ? words.text("whatif.without", steps, days(gain.without().days(), trial.days()))
                : words.text("whatif.without-not", steps, model.date(end(trial)));
        return words.text("whatif.both", with, without);
    }

    private String warmth(Trial trial, double kelvin) {
        String key = Math.abs(kelvin) < OutlookReport.AS_WARM_K
                ? "whatif.as-warm"
                : kelvin > 0 ? "whatif.warmer" : "whatif.colder";
        return words.text(key, words.figures().temperatureDifference(Math.abs(kelvin)), model.date(end(trial)));
    }

    private String pace(Trial trial, Gain gain, int steps) {
        String until = model.date(end(trial));
        if (gain.iced()) {
            return words.text("whatif.iced", until, steps);
        }
        if (gain.asleep()) {
            return words.text("gain.asleep", until);
        }
        return gain.tells() || gain.useless()
                ? words.text("whatif.pace", gains.sooner(gain.daysWon()), gain.days())
                : words.text("gain.unclear");
    }

    private static LocalDate end(Trial trial) {
        return trial.date(trial.days() - 1);
    }

    /** A range of days; one that reaches the end of the time looked at is open. */
    private String days(Range range, int looked) {
        if (range.high() < looked) {
            return words.figures().count(range);
        }
        String likely = words.figures().number(range.likely(), 0);
        return words.text("whatif.open", likely, words.figures().number(range.low(), 0), looked);
    }

    /** Why a chosen step is not reckoned. */
    public String left(WhatIf.Left left) {
        String key = "whatif.left."
                + left.reason().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        return words.text(
                key,
                words.remedy(left.remedy()),
                left.other().map(words::remedy).orElse(""));
    }

    /** The chart in words. */
    public String description(WhatIf whatIf) {
        Trial trial = whatIf.trial();
        int last = trial.days() - 1;
        String without = words.text(
                "whatif.description",
                temperature(trial.without().likely()[0]),
                temperature(trial.without().likely()[last]),
                model.date(trial.date(last)));
        Optional<String> with = trial.with()
                .map(w -> words.text(
                        "whatif.description-with",
                        whatIf.together().size(),
                        temperature(highest(w.core().likely())),
                        temperature(w.core().likely()[last])));
        return with.map(w -> without + " " + w).orElse(without);
    }

    private static double highest(double[] all) {
        double highest = all[0];
        for (double one : all) {
            highest = Math.max(highest, one);
        }
        return highest;
    }

    private String temperature(double celsius) {
        return words.figures().temperature(celsius);
    }

    /** What the model takes for granted. */
    public List<String> premises(WhatIf whatIf) {
        return model.premises(whatIf.trial().model());
    }
}
