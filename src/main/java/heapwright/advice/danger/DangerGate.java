package heapwright.advice.danger;

import heapwright.advice.danger.Alarm.AlarmStep;
import heapwright.advice.engine.Firing;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.Stands;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Danger;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The gate before all advice: where the rules say that a danger stands, it is told what to do about the danger, and
 * nothing else. What stands is the rules' word; what follows is the table's. See {@code docs/method/danger.md}.
 */
public final class DangerGate {

    private final Knowledge knowledge;

    public DangerGate(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /**
     * What to say first and alone; empty while no danger stands.
     *
     * @param facts what is known of the pile: what was answered is not asked again
     * @param firings what the rules of the danger pass said
     */
    public Optional<Alarm> alarm(Collection<?> facts, List<Firing> firings) {
        List<StandingDanger> standing = standing(firings);
        if (standing.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Alarm(
                standing, steps(standing, proposed(firings)), cautions(standing), asks(standing, answered(facts))));
    }

    private List<StandingDanger> standing(List<Firing> firings) {
        Map<Danger, List<Firing>> by = new EnumMap<>(Danger.class);
        for (Firing firing : firings) {
            if (firing.result() instanceof Stands stands) {
                by.computeIfAbsent(stands.danger(), d -> new ArrayList<>()).add(firing);
            }
        }
        return by.entrySet().stream()
                .map(e -> new StandingDanger(
                        knowledge.dangers().get(e.getKey()),
                        e.getValue().stream()
                                .sorted(Comparator.comparing(f -> f.rule().id()))
                                .toList()))
                .toList();
    }

    private static Set<Remedy> proposed(List<Firing> firings) {
        Set<Remedy> proposed = EnumSet.noneOf(Remedy.class);
        firings.forEach(f -> {
            if (f.result() instanceof Proposes p) {
                proposed.add(p.remedy());
            }
        });
        return proposed;
    }

    /** Its steps; where remedy rules propose some of them for what was answered, only those. */
    private static List<Remedy> steps(StandingDanger danger, Set<Remedy> proposed) {
        List<Remedy> fitting =
                danger.info().steps().stream().filter(proposed::contains).toList();
        return fitting.isEmpty() ? danger.info().steps() : fitting;
    }

    private static List<AlarmStep> steps(List<StandingDanger> standing, Set<Remedy> proposed) {
        boolean closed = standing.stream().anyMatch(s -> s.info().closes());
        Set<Danger> overruled = EnumSet.noneOf(Danger.class);
        standing.forEach(s -> overruled.addAll(s.info().overrules()));
        Map<Remedy, StandingDanger> steps = new LinkedHashMap<>();
        standing.stream()
                .filter(s -> !overruled.contains(s.info().id()))
                .filter(s -> s.info().closes() || !closed)
                .forEach(s -> steps(s, proposed).forEach(r -> steps.putIfAbsent(r, s)));
        return steps.entrySet().stream()
                .map(e -> new AlarmStep(e.getKey(), e.getValue()))
                .toList();
    }

    private List<Caution> cautions(List<StandingDanger> standing) {
        Set<Caution> all = EnumSet.noneOf(Caution.class);
        standing.forEach(s -> all.addAll(s.info().cautions()));
        return all.stream()
                .sorted(Comparator.comparing(
                        (Caution c) -> knowledge.cautions().get(c).severity()))
                .toList();
    }

    private static List<Sign> asks(List<StandingDanger> standing, Set<Sign> answered) {
        return standing.stream()
                .flatMap(s -> s.info().asks().stream())
                .filter(s -> !answered.contains(s))
                .distinct()
                .toList();
    }

    private static Set<Sign> answered(Collection<?> facts) {
        Set<Sign> answered = EnumSet.noneOf(Sign.class);
        for (Object fact : facts) {
            if (fact instanceof Seen s) {
                answered.add(s.sign());
            } else if (fact instanceof Denied d) {
                answered.add(d.sign());
            }
        }
        return answered;
    }
}
