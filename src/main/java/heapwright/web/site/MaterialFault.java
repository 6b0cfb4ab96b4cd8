package heapwright.web.site;

import heapwright.knowledge.Knowledge;
import heapwright.pile.Problem;
import java.util.List;

/** Tells what is wrong with a material as typed: what it may mean where it may mean several, else what is nearest. */
final class MaterialFault {

    private final Knowledge knowledge;
    private final Texts texts;

    MaterialFault(Knowledge knowledge, Texts texts) {
        this.knowledge = knowledge;
        this.texts = texts;
    }

    /**
     * The sentence.
     *
     * @param field what the field is called
     * @param typed what was typed into it
     * @param problem what the reader found
     */
    String text(String field, String typed, Problem problem) {
        List<String> candidates = MaterialChoices.candidates(knowledge, typed);
        if (candidates.size() > 1) {
            return texts.of("fault.several", field, typed, String.join("; ", candidates));
        }
        return new FaultWords(texts)
                .text(
                        field,
                        "material",
                        typed,
                        "",
                        problem.allowed(),
                        problem.closest().map(c -> MaterialChoices.shown(knowledge, c)));
    }
}
