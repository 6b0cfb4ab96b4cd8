package heapwright.report;

import heapwright.knowledge.HeatRule;
import heapwright.knowledge.Survivor;
import heapwright.pile.Pile;
import heapwright.process.sanitation.Fate;
import heapwright.process.sanitation.HeatLedger;
import heapwright.process.sanitation.HeatRecord;
import heapwright.process.sanitation.HotDays;
import heapwright.process.sanitation.RuleCheck;
import heapwright.process.sanitation.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The sentences of the heat ledger. Each says that it speaks of the core alone, or stands under a line that does. */
public final class SanitationWords {

    private static final int HOURS_A_DAY = 24;

    private final Words words;

    public SanitationWords(Words words) {
        this.words = words;
    }

    /** The whole in one sentence, or two where heat of before does not count. */
    public String headline(HeatLedger ledger) {
        String shown = shown(ledger);
        String key = ledger.record().measured() ? "sanitise.counts-from" : "sanitise.unmeasured-since";
        return ledger.countsFrom()
                .map(day -> words.text(key, shown, new ModelWords(words).date(day)))
                .orElse(shown);
    }

    private String shown(HeatLedger ledger) {
        RuleCheck.Shown gate = ledger.gate();
        String heat = words.figures().temperature(gate.need().celsius());
        if (!ledger.record().measured()) {
            return words.text("sanitise.unmeasured");
        }
        if (gate.met()) {
            return words.text("sanitise.shown", heat, gate.days(), gate.turns());
        }
        return words.text(
                "sanitise.not-shown", heat, gate.need().days(), gate.need().turns(), missing(gate));
    }

    /** The line that a checkup carries. */
    public String line(HeatLedger ledger) {
        return words.text("sanitise.line", headline(ledger));
    }

    /** The days at one temperature. */
    public String level(HotDays level) {
        String heat = words.figures().temperature(level.celsius());
        Optional<Stretch> longest = level.longest();
        return longest.isEmpty()
                ? words.text("sanitise.level-none", heat)
                : words.text(
                        "sanitise.level",
                        heat,
                        level.total(),
                        longest.get().days().size(),
                        longest.get().turns().size(),
                        hours(level.hours()));
    }

    /** All that a rule asks; turns are told once where each way asks the same. */
    public String needs(HeatRule rule) {
        List<String> ways = rule.needs().stream().map(this::need).toList();
        int last = ways.size() - 1;
        String told = last == 0
                ? ways.get(0)
                : String.join(", ", ways.subList(0, last)) + words.text("sanitise.or") + ways.get(last);
        int turns = rule.needs().get(0).turns();
        return turns == 0 ? told : words.text("sanitise.need-turns", told, turns);
    }

    /** What one way to meet a rule asks, without its turns. */
    private String need(HeatRule.Need need) {
        String heat = words.figures().temperature(need.celsius());
        return need.days() < 1
                ? words.text("sanitise.need-hours", Math.round(need.days() * HOURS_A_DAY), heat)
                : words.text("sanitise.need", need.days(), heat);
    }

    /** How far the core gets by a rule. */
    public String verdict(RuleCheck check) {
        return switch (check.verdict()) {
            case CORE_ONLY -> words.text("sanitise.core-only");
            case SHORT -> words.text("sanitise.short", missing(check.nearest().orElseThrow()));
            case NOT_MEASURED -> words.text("sanitise.not-measured");
            case OTHER_METHOD -> words.text("sanitise.other-method");
        };
    }

    private String missing(RuleCheck.Shown shown) {
        String heat = words.figures().temperature(shown.need().celsius());
        String days = shown.need().days() < 1 && shown.missingDays() > 0
                ? words.text("sanitise.missing-hours", heat)
                : shown.missingDays() > 0
                        ? words.text("sanitise.missing-days", Math.ceil(shown.missingDays()), heat)
                        : "";
        String turns = shown.missingTurns() > 0 ? words.text("sanitise.missing-turns", shown.missingTurns()) : "";
        return List.of(days, turns).stream()
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining(words.text("sanitise.and")));
    }

    private String hours(double hours) {
        return words.figures().number(hours, 0);
    }

    /** What is to be thought of one weed, pest or disease. */
    public String fate(Fate fate) {
        return words.text("sanitise.fate." + lower(fate.verdict().name()));
    }

    /** One trial: the heat, the time, what came of it and who says so. */
    public String trial(Survivor.Trial trial) {
        String heat = trial.celsius().isPresent()
                ? trial.toCelsius().isPresent()
                        ? words.figures()
                                .span(
                                        words.figures()
                                                .temperature(trial.celsius().getAsDouble()),
                                        words.figures()
                                                .temperature(trial.toCelsius().getAsDouble()))
                        : words.figures().temperature(trial.celsius().getAsDouble())
                : trial.toCelsius().isPresent()
                        ? words.text(
                                "sanitise.below",
                                words.figures().temperature(trial.toCelsius().getAsDouble()))
                        : "";
        String time = trial.days().isPresent() ? time(trial.days().getAsDouble()) : "";
        String where = List.of(heat, time).stream().filter(s -> !s.isEmpty()).collect(Collectors.joining(", "));
        return words.text(
                where.isEmpty() ? "sanitise.trial-bare" : "sanitise.trial",
                where,
                words.text("sanitise.result." + lower(trial.result().name())),
                trial.said(),
                words.text("known." + trial.known().id()),
                trial.source());
    }

    private String time(double days) {
        return days < 1
                ? words.text("sanitise.hours", words.figures().round(days * HOURS_A_DAY))
                : words.text("sanitise.days", words.figures().number(days, 0));
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The verdict, and whether it stays out whatever the trials say. */
    public String fateWithNever(Fate fate) {
        return fate.survivor().neverCompost() ? words.text("sanitise.never", fate(fate)) : fate(fate);
    }

    /** How days without a reading are treated. */
    public String gaps() {
        return words.text("sanitise.gaps", HeatRecord.MOST_DAYS_BETWEEN);
    }

    /** The days from one turn to the next. */
    public String between(HeatLedger ledger, HeatLedger.BetweenTurns b) {
        List<String> days = new ArrayList<>();
        for (int i = 0; i < b.days().size(); i++) {
            if (i == 0 || b.days().get(i) > 0) {
                days.add(words.text(
                        "sanitise.between-level",
                        words.figures().temperature(ledger.levels().get(i).celsius()),
                        b.days().get(i)));
            }
        }
        ModelWords dates = new ModelWords(words);
        return words.text("sanitise.between", dates.date(b.from()), dates.date(b.to()), String.join(", ", days));
    }

    /** What else a rule asks, and who says so. */
    public String also(HeatRule rule) {
        return words.text(
                "sanitise.rule-also",
                rule.also(),
                words.text("known." + rule.known().id()),
                String.join(", ", rule.sources()));
    }

    /** The title. */
    public String title(Pile pile) {
        return words.text("sanitise.title", pile.name(), new ModelWords(words).date(pile.asOf()));
    }
}
