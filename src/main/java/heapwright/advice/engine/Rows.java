package heapwright.advice.engine;

import heapwright.advice.fact.Denied;
import heapwright.advice.fact.RowOnDenied;
import heapwright.advice.fact.RowOnFailed;
import heapwright.advice.fact.RowOnHelped;
import heapwright.advice.fact.RowOnHolds;
import heapwright.advice.fact.RowOnHoldsNot;
import heapwright.advice.fact.RowOnKeptOut;
import heapwright.advice.fact.RowOnMeasured;
import heapwright.advice.fact.RowOnModel;
import heapwright.advice.fact.RowOnPlaced;
import heapwright.advice.fact.RowOnSeen;
import heapwright.advice.fact.RowOnWentIn;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.Stand;
import heapwright.advice.fact.Waiting;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.EvidenceWords;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Sign;
import heapwright.knowledge.When;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The rows of evidence: as facts for the rules that join them, and as what the trace says of each. A row that any of
 * several things makes speak is a fact for each of them. Each kind has a fact of its own, so that the engine need not
 * try each row against each rule.
 */
public final class Rows {

    private final Map<Evidence, RuleInfo> infos = new LinkedHashMap<>();
    private final Map<Sign, List<Waiting>> onSigns = new EnumMap<>(Sign.class);
    private final List<Waiting> onOthers = new ArrayList<>();

    public Rows(Knowledge knowledge) {
        EvidenceWords words = new EvidenceWords(knowledge);
        for (Evidence row : knowledge.evidence()) {
            infos.put(row, info(row, words.name(row)));
            facts(row).forEach(this::file);
        }
    }

    private void file(Waiting fact) {
        if (fact instanceof RowOnSeen row) {
            onSigns.computeIfAbsent(row.sign(), s -> new ArrayList<>()).add(row);
        } else if (fact instanceof RowOnDenied row) {
            onSigns.computeIfAbsent(row.sign(), s -> new ArrayList<>()).add(row);
        } else {
            onOthers.add(fact);
        }
    }

    private static RuleInfo info(Evidence row, String name) {
        return new RuleInfo(row.id(), name, Pass.WEIGH, row.strength(), row.known(), row.source(), row.because());
    }

    private static Stream<Waiting> facts(Evidence row) {
        When when = row.when();
        if (when instanceof When.Seen seen) {
            return seen.anyOf().stream().map(s -> new RowOnSeen(s, row));
        }
        if (when instanceof When.Denied denied) {
            return denied.anyOf().stream().map(s -> new RowOnDenied(s, row));
        }
        if (when instanceof When.WentIn went) {
            return went.anyOf().stream().map(t -> new RowOnWentIn(t, row));
        }
        if (when instanceof When.Helped helped) {
            return helped.anyOf().stream().map(r -> new RowOnHelped(r, row));
        }
        if (when instanceof When.Failed failed) {
            return failed.anyOf().stream().map(r -> new RowOnFailed(r, row));
        }
        return Stream.of(fact(when, row));
    }

    private static Waiting fact(When when, Evidence row) {
        if (when instanceof When.Holds holds) {
            return new RowOnHolds(holds.condition(), row);
        }
        if (when instanceof When.HoldsNot not) {
            return new RowOnHoldsNot(not.condition(), row);
        }
        if (when instanceof When.Placed placed) {
            Stand stand = new Stand(placed.reading(), placed.side(), placed.limit());
            return placed.measured() ? new RowOnMeasured(stand, row) : new RowOnPlaced(stand, row);
        }
        if (when instanceof When.ModelSays says) {
            return new RowOnModel(says.finding(), row);
        }
        return new RowOnKeptOut(((When.KeptOut) when).kind(), row);
    }

    /** What every row says of itself, in the order of the tables. */
    public Collection<RuleInfo> infos() {
        return infos.values();
    }

    /**
     * The rows as facts. Those that wait for a sign which nobody answered are left out: they cannot speak, and to take
     * them in would be a third of a session's work.
     *
     * @param known what is known of the pile
     */
    List<Waiting> facts(Collection<?> known) {
        List<Waiting> facts = new ArrayList<>(onOthers);
        answered(known).forEach(sign -> facts.addAll(onSigns.getOrDefault(sign, List.of())));
        return facts;
    }

    private static Set<Sign> answered(Collection<?> known) {
        Set<Sign> answered = EnumSet.noneOf(Sign.class);
        for (Object fact : known) {
            if (fact instanceof Seen seen) {
                answered.add(seen.sign());
            } else if (fact instanceof Denied denied) {
                answered.add(denied.sign());
            }
        }
        return answered;
    }

    RuleInfo of(Evidence row) {
        return infos.get(row);
    }
}
