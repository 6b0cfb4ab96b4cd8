package heapwright.advice;

import heapwright.advice.fact.Grade;
import heapwright.knowledge.Cause;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.Id;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Remedy;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is said first: a danger, then what must not be used, then trouble, then what is well. The one rule for every
 * door.
 *
 * @param kind which of them
 * @param findings the findings it names, first what the first step mends, then the likeliest; none for a danger, which has
 *     words of its own
 */
public record Headline(Kind kind, List<Finding> findings) {

    /** Three reasons are as many as a sentence holds. */
    private static final int MOST = 3;

    private static final Comparator<Finding> SUREST =
            Comparator.comparing(Finding::grade).reversed();

    /** Harmless in themselves, but no sign of how the pile does: a rotten bucket has them too. */
    private static final Set<Cause> GUESTS = EnumSet.of(Cause.HARMLESS_FUNGI, Cause.HARMLESS_VISITORS);

    /** What counts when it is used, and is said after what slows or spoils the pile today. */
    private static final Set<Cause> OF_USE = EnumSet.of(Cause.PATHOGEN_RISK);

    /** What a headline may be about, the first before the last. */
    public enum Kind implements Id {
        DANGER,
        MUST_NOT_BE_USED,
        CONTRADICTION,
        TROUBLE,
        WELL,
        UNCLEAR
    }

    public Headline {
        findings = List.copyOf(findings);
    }

    /** The headline of a piece of advice. */
    public static Headline of(Advice advice, Knowledge knowledge) {
        if (advice.alarm().isPresent()) {
            return new Headline(Kind.DANGER, List.of());
        }
        List<Finding> barred = of(advice, knowledge, EnumSet.of(CauseInfo.Kind.MUST_NOT_BE_USED)).stream()
                .filter(f -> f.grade().atLeast(Grade.LIKELY))
                .toList();
        if (!barred.isEmpty()) {
            return new Headline(Kind.MUST_NOT_BE_USED, barred);
        }
        if (!advice.contradictions().isEmpty() || looksAgain(advice)) {
            return new Headline(Kind.CONTRADICTION, List.of());
        }
        List<Finding> troubles = firstStepFirst(
                advice, of(advice, knowledge, EnumSet.of(CauseInfo.Kind.MUST_NOT_BE_USED, CauseInfo.Kind.TROUBLE)));
        List<Finding> well = of(advice, knowledge, EnumSet.of(CauseInfo.Kind.WELL));
        if (!troubles.isEmpty() && (troubled(troubles) || !sound(well, troubles))) {
            return new Headline(
                    Kind.TROUBLE,
                    sound(state(well), troubles) || cared(advice, well)
                            ? Stream.concat(well.stream().limit(1), troubles.stream())
                                    .limit(MOST)
                                    .sorted(SUREST)
                                    .toList()
                            : troubles);
        }
        return well.isEmpty() ? new Headline(Kind.UNCLEAR, List.of()) : new Headline(Kind.WELL, well.subList(0, 1));
    }

    /** Whether a finding counts when the compost is used, more than for the pile today. */
    public static boolean countsInUse(Cause cause) {
        return OF_USE.contains(cause);
    }

    /** Whether two readings are at odds, such as hand and thermometer: then all waits for another look. */
    private static boolean looksAgain(Advice advice) {
        return advice.steps().stream().limit(1).anyMatch(s -> s.main().remedy() == Remedy.LOOK_AGAIN);
    }

    /**
     * What is surer is named before what is less so, and of what is as sure what the first step puts right, so that both
     * say one thing; the rest by likelihood.
     */
    private static List<Finding> firstStepFirst(Advice advice, List<Finding> troubles) {
        Set<Cause> served = served(advice);
        return troubles.stream()
                .sorted(Comparator.<Finding, Boolean>comparing(
                                f -> OF_USE.contains(f.cause()) && !served.contains(f.cause()))
                        .thenComparing(SUREST)
                        .thenComparing(f -> !served.contains(f.cause())))
                .toList();
    }

    /** Whether the first step is care of a pile that is likely well, such as its first turn. */
    private static boolean cared(Advice advice, List<Finding> well) {
        Set<Cause> served = served(advice);
        return well.stream().limit(1).anyMatch(f -> f.grade().atLeast(Grade.LIKELY) && served.contains(f.cause()));
    }

    private static Set<Cause> served(Advice advice) {
        return advice.steps().stream()
                .limit(1)
                .flatMap(s -> s.main().grounds().stream())
                .map(ProposalReason::cause)
                .collect(Collectors.toSet());
    }

    private static List<Finding> state(List<Finding> well) {
        return well.stream().filter(f -> !GUESTS.contains(f.cause())).toList();
    }

    private static boolean troubled(List<Finding> troubles) {
        return troubles.stream().anyMatch(f -> f.grade().atLeast(Grade.LIKELY));
    }

    /** Whether a pile is likely well, and likelier so than any trouble that is only possible. */
    private static boolean sound(List<Finding> well, List<Finding> troubles) {
        return !well.isEmpty()
                && well.get(0).grade().atLeast(Grade.LIKELY)
                && troubles.stream().allMatch(t -> well.get(0).likelihood() > t.likelihood());
    }

    private static List<Finding> of(Advice advice, Knowledge knowledge, Set<CauseInfo.Kind> kinds) {
        return advice.findings().stream()
                .filter(f -> kinds.contains(knowledge.causes().get(f.cause()).kind()))
                .limit(MOST)
                .toList();
    }
}
