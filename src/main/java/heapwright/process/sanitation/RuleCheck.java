package heapwright.process.sanitation;

import heapwright.knowledge.HeatRule;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * One rule beside what the record shows of the core. It never says more than "in the core".
 *
 * @param rule the rule
 * @param verdict how far the core gets
 * @param nearest the way of the rule to which the record comes nearest; empty where it is for another kind of composting
 */
public record RuleCheck(HeatRule rule, Verdict verdict, Optional<Shown> nearest) {

    /** How far the core gets. */
    public enum Verdict {
        /** The core had what the rule asks; whether the rest had is not known. */
        CORE_ONLY,
        /** Days or turns are missing. */
        SHORT,
        /** No core temperature was ever measured. */
        NOT_MEASURED,
        /** It is for a closed vessel or blown air. */
        OTHER_METHOD
    }

    /**
     * What the record shows of one way to meet a rule.
     *
     * @param need what it asks
     * @param days the days that count, part of a day where hours are asked
     * @param turns the turns that count
     */
    public record Shown(HeatRule.Need need, double days, int turns) {

        public double missingDays() {
            return Math.max(0, need.days() - days);
        }

        public int missingTurns() {
            return Math.max(0, need.turns() - turns);
        }

        public boolean met() {
            return missingDays() <= 0 && missingTurns() == 0;
        }
    }

    private static final double HOURS_A_DAY = 24;

    static RuleCheck of(HeatRule rule, HeatRecord record) {
        if (rule.method() == HeatRule.Method.VESSEL || rule.method() == HeatRule.Method.COVERED) {
            return new RuleCheck(rule, Verdict.OTHER_METHOD, Optional.empty());
        }
        if (!record.measured()) {
            return new RuleCheck(rule, Verdict.NOT_MEASURED, Optional.empty());
        }
        Shown nearest = rule.needs().stream()
                .map(need -> shown(need, record))
                .min(Comparator.comparing((Shown s) -> s.days() <= 0)
                        .thenComparingDouble(RuleCheck::missing)
                        .thenComparingDouble(s -> s.need().celsius()))
                .orElseThrow();
        return new RuleCheck(rule, nearest.met() ? Verdict.CORE_ONLY : Verdict.SHORT, Optional.of(nearest));
    }

    private static double missing(Shown shown) {
        return shown.missingDays() + shown.missingTurns();
    }

    static Shown shown(HeatRule.Need need, HeatRecord record) {
        HotDays hot = record.at(need.celsius());
        if (!need.inARow()) {
            NavigableSet<LocalDate> days = new TreeSet<>();
            NavigableSet<LocalDate> turns = new TreeSet<>();
            hot.stretches().forEach(s -> {
                days.addAll(s.days());
                turns.addAll(s.turns());
            });
            return shown(need, new Stretch(days, turns, hot.hours(), need.celsius()));
        }
        return hot.stretches().stream()
                .map(s -> shown(need, s))
                .min(Comparator.comparingDouble(RuleCheck::missing).thenComparingDouble(s -> -s.days()))
                .orElseGet(() -> shown(need, Stretch.none()));
    }

    /** Less than a day is shown only by two readings with nothing done between them. */
    private static Shown shown(HeatRule.Need need, Stretch stretch) {
        double days =
                need.days() < 1 ? stretch.hours() / HOURS_A_DAY : stretch.days().size();
        return new Shown(need, days, stretch.turns(need.daysApart(), need.hotDaysBefore()));
    }
}
