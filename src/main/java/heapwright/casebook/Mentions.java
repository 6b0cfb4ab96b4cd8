package heapwright.casebook;

import heapwright.knowledge.Id;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import heapwright.pile.Stock;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/** Finds the cases that speak of one thing: that demand it, tell it, or rest on it. */
public final class Mentions {

    private Mentions() {}

    /**
     * The cases in their order.
     *
     * @param id the id of a cause, remedy, caution, sign, material or source
     * @param cases all cases
     */
    public static List<Case> of(String id, List<Case> cases) {
        return cases.stream().filter(c -> mentions(c, id)).toList();
    }

    private static boolean mentions(Case one, String id) {
        return one.source().equals(id)
                || demanded(one.expect()).anyMatch(id::equals)
                || told(one.pile()).anyMatch(id::equals);
    }

    private static Stream<String> demanded(Expectation expect) {
        Stream<Collection<? extends Id>> lists = Stream.of(
                expect.causes(),
                expect.likely(),
                expect.notCauses(),
                expect.setAside(),
                expect.steps(),
                expect.firstStep().stream().toList(),
                expect.notSteps(),
                expect.withheld(),
                expect.forbidden(),
                expect.cautions(),
                expect.notCautions(),
                expect.stepCautions().keySet());
        Stream<Collection<? extends Id>> nested = Stream.<Collection<? extends Id>>concat(
                Stream.concat(expect.inOrder().stream(), expect.contradictions().stream()),
                expect.stepCautions().values().stream());
        return Stream.concat(lists, nested).flatMap(Collection::stream).map(Id::id);
    }

    private static Stream<String> told(Pile pile) {
        Stream<String> stuff = Stream.concat(
                        pile.recipe().stream(), pile.log().stream().flatMap(e -> e.added().stream()))
                .map(Ingredient::material);
        Stream<String> signs = pile.log().stream().flatMap(Mentions::signs);
        return Stream.concat(Stream.concat(stuff, signs), pile.atHand().stream().map(Stock::material));
    }

    private static Stream<String> signs(Entry entry) {
        return Stream.concat(entry.seen().stream(), entry.notSeen().stream());
    }
}
