package heapwright.report;

import heapwright.advice.WithheldStep;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Says which steps are held back and why; those with the same reason stand together. */
public final class HeldText {

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
