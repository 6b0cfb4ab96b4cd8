package heapwright.report;

import heapwright.advice.WithheldStep;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Trait;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import heapwright.pile.Stock;
import heapwright.process.mixture.Materials;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Says which steps are held back and why; those with the same reason stand together. */
public final class HeldText {

    private static final Set<Remedy> FERTILISING =
            Set.of(Remedy.ADD_UREA, Remedy.ADD_AMMONIUM_SULPHATE, Remedy.ADD_MEAL);

    private final Words words;

    public HeldText(Words words) {
        this.words = words;
    }

    /**
     * Steps held back for one reason.
     *
     * @param id the first of them
     * @param names their names
     * @param reason why, in the words of the rules
     */
    public record Together(String id, List<String> names, String reason) {
        public Together {
            names = List.copyOf(names);
        }

        /** Their names, the first as it stands and the others after a semicolon. */
        public String steps() {
            return String.join("; ", names);
        }
    }

    /** What is held back, in the order of the advice. */
    public List<Together> of(List<WithheldStep> withheld) {
        Map<String, List<WithheldStep>> byReason = new LinkedHashMap<>();
        withheld.forEach(
                h -> byReason.computeIfAbsent(reason(h), r -> new ArrayList<>()).add(h));
        return byReason.entrySet().stream()
                .map(e -> new Together(
                        e.getValue().get(0).remedy().id(),
                        e.getValue().stream().map(this::name).toList(),
                        e.getKey()))
                .toList();
    }

    /**
     * Whether somebody might take the step unasked: nobody pours on a fertiliser, or dusts in meal, of which there is none
     * at hand and none went in. The full report still says why not.
     */
    boolean comesToMind(WithheldStep held, Pile pile) {
        if (!FERTILISING.contains(held.remedy())) {
            return true;
        }
        Materials known = Materials.of(words.knowledge().materials(), pile.materials());
        return Stream.of(
                        pile.atHand().stream().map(Stock::material),
                        pile.recipe().stream().map(Ingredient::material),
                        pile.log().stream().flatMap(e -> e.added().stream()).map(Ingredient::material))
                .flatMap(ids -> ids)
                .flatMap(id -> known.find(id).stream())
                .anyMatch(m -> m.traits().contains(Trait.FAST_NITROGEN));
    }

    private String name(WithheldStep held) {
        String name = words.remedy(held.remedy());
        return held.until()
                .map(day -> words.text("held.until", name, new Days(words).of(day)))
                .orElse(name);
    }

    /** Why one step is held back, in the words of the rules. */
    public String reason(WithheldStep held) {
        List<String> reasons = new ArrayList<>();
        held.rules().forEach(r -> reasons.add(words.rationale(r)));
        held.undoes().ifPresent(r -> reasons.add(words.text("held.undoes", words.remedy(r))));
        if (reasons.isEmpty()) {
            reasons.add(words.text("held.season"));
        }
        return String.join(" ", reasons);
    }
}
