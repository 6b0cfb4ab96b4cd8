package heapwright.advice;

import heapwright.advice.fact.AlreadyIn;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Sign;
import java.util.ArrayList;
import java.util.List;

/** What a yes tells the rules: the sign, what went in by it, and what should have stayed out. */
final class AffirmedFacts {

    private AffirmedFacts() {}

    /** The facts of a yes of today. */
    static List<Object> facts(Sign sign, Knowledge knowledge) {
        List<Object> facts = new ArrayList<>();
        facts.add(new Seen(sign, 0));
        knowledge.signs().get(sign).brings().forEach(trait -> facts.add(new WentIn(trait, 0, Double.NaN)));
        knowledge.keepOuts().values().stream()
                .filter(k -> k.signs().contains(sign))
                .forEach(k -> facts.add(new AlreadyIn(k.id(), k.nothingForkedThrough(), true, 0)));
        return facts;
    }
}
