package heapwright.advice.audit;

import heapwright.advice.engine.Firing;
import heapwright.advice.fact.Judges;
import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Topic;

/**
 * What one audit rule says of a recipe.
 *
 * @param topic what it judges
 * @param mark what it says of it
 * @param firing the rule and the facts it spoke on
 */
public record Judgement(Topic topic, Mark mark, Firing firing) {

    static Judgement of(Firing firing) {
        Judges judges = (Judges) firing.result();
        return new Judgement(judges.topic(), judges.mark(), firing);
    }
}
