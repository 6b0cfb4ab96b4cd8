package heapwright.advice.audit;

import heapwright.advice.observe.Answers;
import heapwright.advice.observe.Inputs;
import heapwright.advice.observe.Tried;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a recipe states beside its numbers: what went in, and where it is to stand. */
final class RecipeFacts {

    private RecipeFacts() {}

    static List<Object> of(Pile pile, Materials materials) {
        List<Object> facts = new ArrayList<>(new Inputs(pile, materials).facts());
        facts.addAll(new Answers(pile, Map.of(), new Tried(pile, Map.of(), 0), 0).fixtures());
        return facts;
    }
}
