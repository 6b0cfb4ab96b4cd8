package heapwright.author;

import heapwright.advice.engine.Edges;
import heapwright.knowledge.Condition;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.Id;
import heapwright.knowledge.KeepOutClass;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Trait;
import heapwright.knowledge.When;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds what can never come to speak: rows that wait for nothing that comes, steps and states that nothing leads to. */
final class DeadEntries {

    private final Knowledge knowledge;
    private final RuleReach reach;
    private final Set<Remedy> offered;
    private final Set<Trait> traits = EnumSet.noneOf(Trait.class);
    private final Set<KeepOutClass> kept = EnumSet.noneOf(KeepOutClass.class);

    DeadEntries(Knowledge knowledge, RuleReach reach) {
        this.knowledge = knowledge;
        this.reach = reach;
        this.offered = EnumSet.copyOf(reach.proposed());
        knowledge.dangers().values().forEach(d -> offered.addAll(d.steps()));
        knowledge.materials().values().forEach(m -> {
            traits.addAll(m.traits());
            m.keepOut().ifPresent(k -> kept.add(k.kind()));
        });
        knowledge.signs().values().forEach(s -> traits.addAll(s.brings()));
        knowledge.keepOuts().values().stream().filter(k -> !k.signs().isEmpty()).forEach(k -> kept.add(k.id()));
    }

    List<String> looks() {
        List<String> looks = new ArrayList<>();
        Map<Object, Evidence> said = new HashMap<>();
        for (Evidence row : knowledge.evidence()) {
            String where = "evidence/" + row.cause().id() + ".json, " + row.id() + ": ";
            waitsFor(row.when()).ifPresent(what -> looks.add(where + "can never speak: " + what + "."));
            Evidence other = said.putIfAbsent(List.of(row.cause(), row.when()), row);
            if (other != null && other.speaks() != row.speaks()) {
                looks.add(where + "speaks " + row.speaks().id() + " on what " + other.id() + " speaks "
                        + other.speaks().id() + " on.");
            }
        }
        EnumSet.complementOf(EnumSet.copyOf(offered))
                .forEach(r -> looks.add("tables/remedies.json, " + r.id()
                        + ": can never be offered: no rule proposes it, and it is no step of a danger."));
        Set<Condition> asked = asked();
        reach.derived().stream()
                .filter(c -> !asked.contains(c))
                .forEach(c -> looks.add("derive: " + c.id() + ": is named, and nothing asks for it."));
        return looks;
    }

    /** What a row waits for and never comes. */
    private Optional<String> waitsFor(When when) {
        if (when instanceof When.Holds holds) {
            return state(holds.condition());
        }
        if (when instanceof When.HoldsNot not) {
            return state(not.condition());
        }
        if (when instanceof When.Placed placed && !Edges.known(placed.reading(), placed.limit())) {
            return Optional.of("nothing compares " + placed.reading().id() + " with "
                    + placed.limit().id() + ", since the program has no such edge");
        }
        if (when instanceof When.WentIn went) {
            return none(went.anyOf(), traits, "no material has the trait ", ", and no sign brings it");
        }
        if (when instanceof When.KeptOut out) {
            return none(List.of(out.kind()), kept, "no material and no sign is of the class ", "");
        }
        if (when instanceof When.Helped helped) {
            return none(helped.anyOf(), offered, "nothing ever offers the step ", "");
        }
        if (when instanceof When.Failed failed) {
            return none(failed.anyOf(), offered, "nothing ever offers the step ", "");
        }
        return Optional.empty();
    }

    private Optional<String> state(Condition condition) {
        return reach.derived().contains(condition)
                ? Optional.empty()
                : Optional.of("no rule in derive names the state " + condition.id());
    }

    private static <T extends Id> Optional<String> none(List<T> wanted, Collection<T> there, String what, String more) {
        return wanted.stream().anyMatch(there::contains)
                ? Optional.empty()
                : Optional.of(what + wanted.stream().map(Id::id).collect(Collectors.joining(" or ")) + more);
    }

    private Set<Condition> asked() {
        Set<Condition> asked = EnumSet.noneOf(Condition.class);
        asked.addAll(reach.read());
        knowledge.cautions().values().forEach(c -> {
            asked.addAll(c.fits().onlyIf());
            asked.addAll(c.fits().neverIf());
        });
        knowledge.evidence().forEach(row -> {
            if (row.when() instanceof When.Holds holds) {
                asked.add(holds.condition());
            } else if (row.when() instanceof When.HoldsNot not) {
                asked.add(not.condition());
            }
        });
        return asked;
    }
}
