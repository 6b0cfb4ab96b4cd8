package heapwright.report;

import heapwright.process.dose.Term;
import heapwright.process.mixture.Basis;
import java.util.ArrayList;
import java.util.List;

/** The figures behind an amount, in words. */
final class TermWords {

    /** The whole, percent. */
    private static final double ALL = 100;

    private final Words words;

    TermWords(Words words) {
        this.words = words;
    }

    /** Figures with their names, in one line. */
    String told(List<Term> terms) {
        List<String> told = new ArrayList<>();
        for (Term term : terms) {
            String key = "term." + term.key().id();
            double likely = term.value().likely();
            boolean assumed = term.basis() == Basis.ASSUMED;
            if (likely > ALL && words.catalogue().has(key + ".times")) {
                boolean named = assumed && words.catalogue().has(key + ".times.assumed");
                told.add(words.text(
                        key + (named ? ".times.assumed" : ".times"),
                        words.figures().times(likely / ALL)));
            } else if (assumed && words.catalogue().has(key + ".assumed")) {
                told.add(words.text(key + ".assumed", value(term)));
            } else if (words.catalogue().has(key)) {
                String text = words.text(key, value(term));
                told.add(assumed ? words.text("dose.assumed", text) : text);
            }
        }
        return String.join("; ", told);
    }

    String value(Term term) {
        Figures figures = words.figures();
        double likely = term.value().likely();
        return switch (term.key()) {
            // To the same digit as the readings of the pile, which stand on the same page.
            case PILE_MOISTURE, TARGET_MOISTURE, MOISTURE_AFTER, AIR_BEFORE, AIR_AFTER, TARGET_AIR ->
                figures.number(likely, 0) + " %";
            case PILE_CARBON_TO_NITROGEN, TARGET_CARBON_TO_NITROGEN, CARBON_TO_NITROGEN_AFTER ->
                figures.number(likely, 0);
            default -> byUnit(term);
        };
    }

    private String byUnit(Term term) {
        Figures figures = words.figures();
        double likely = term.value().likely();
        return switch (term.key().unit()) {
            case "kg" -> figures.mass(likely);
            case "g" -> figures.mass(likely / 1000);
            case "L" -> figures.volume(likely);
            case "m³" -> figures.pileVolume(likely);
            case "%" -> figures.round(likely) + " %";
            case "cm" -> figures.length(likely);
            case "m²" -> figures.area(likely, likely);
            case "g/L" -> figures.round(likely) + " g/L";
            default -> figures.round(likely);
        };
    }
}
