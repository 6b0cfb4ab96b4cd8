package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.fact.Harmed;
import heapwright.knowledge.Harm;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Says plainly what work on the pile did harm, when that was, and that it is not done again. */
final class HarmText {

    private final Words words;

    HarmText(Words words) {
        this.words = words;
    }

    /** A sentence for each harm, of the last work that did it. */
    List<String> of(Advice advice) {
        Map<Harm, Integer> last = new EnumMap<>(Harm.class);
        advice.outcome().of(Harmed.class).forEach(f -> {
            Harmed harmed = (Harmed) f.result();
            last.merge(harmed.harm(), harmed.daysAgo(), Math::min);
        });
        Days days = new Days(words);
        return last.entrySet().stream()
                .map(e -> words.text(
                        "harm." + e.getKey().id(), days.of(advice.pile().asOf().minusDays(e.getValue()))))
                .toList();
    }
}
