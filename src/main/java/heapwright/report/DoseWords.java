package heapwright.report;

import heapwright.advice.Option;
import heapwright.knowledge.Dose;
import heapwright.knowledge.Material;
import heapwright.knowledge.MeasureInfo;
import heapwright.pile.Pile;
import heapwright.process.dose.DoseAmount;
import heapwright.process.dose.Household;
import heapwright.process.dose.Term;
import heapwright.process.mixture.Band;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts doses into words: the amount with its span, then the measure of the house beside it. */
public final class DoseWords {

    private static final List<String> BULK = List.of("wheelbarrow", "bucket", "handful");
    private static final List<String> BULK_US = List.of("wheelbarrow", "five-gallon-bucket", "handful");
    private static final List<String> WATER = List.of("bucket", "jug", "cup");
    private static final List<String> WATER_US = List.of("five-gallon-bucket", "us-cup");
    private static final List<String> POWDER = List.of("cup", "tablespoon", "teaspoon");
    private static final List<String> POWDER_US = List.of("us-cup", "tablespoon", "teaspoon");

    /** Doses that are measured with spoons and cups. */
    private static final Set<Dose> SPOONED = Set.of(Dose.UREA, Dose.AMMONIUM_SULPHATE, Dose.MEAL, Dose.ASH);

    private final Words words;

    public DoseWords(Words words) {
        this.words = words;
    }

    /** The amounts of a step, a line each. */
    public List<String> lines(Option option, Pile pile) {
        return option.doses().stream().flatMap(d -> line(d, pile).stream()).toList();
    }

    /** What to know about the amounts of a step: where they were held down, and what they rest on. */
    public List<String> remarks(Option option) {
        List<String> remarks = new ArrayList<>();
        for (DoseAmount dose : option.doses()) {
            dose.cap().ifPresent(c -> remarks.add(words.word("cap", c)));
            working(dose).ifPresent(remarks::add);
        }
        return remarks;
    }

    private Optional<String> line(DoseAmount dose, Pile pile) {
        if (!dose.isNeeded()) {
            return Optional.empty();
        }
        String what =
                dose.material().map(m -> thing(m)).orElseGet(() -> words.text("dose.thing." + thing(dose.dose())));
        String amount = dose.parts() == 1
                ? words.text(
                        "dose.once", amount(dose, dose.kg(), dose.litres()), what, house(dose, dose.litres(), pile))
                : words.text(
                        "dose.split",
                        amount(dose, dose.kg(), dose.litres()),
                        what,
                        dose.parts(),
                        amount(dose, dose.kgEach(), dose.litresEach()),
                        house(dose, dose.litresEach(), pile),
                        dose.intervalDays());
        if (dose.carrierLitres().likely() > 0) {
            amount += " " + words.text("dose.carrier", likely(dose.carrierLitres()));
        }
        return Optional.of(amount);
    }

    private String thing(Material material) {
        return material.name().toLowerCase(Locale.ROOT);
    }

    private static String thing(Dose dose) {
        return switch (dose) {
            case ENLARGE -> "mix";
            default -> "water";
        };
    }

    /** Water and fresh mix by volume, the rest by mass, each as likely with its span. */
    private String amount(DoseAmount dose, Band kg, Band litres) {
        Figures figures = words.figures();
        boolean byVolume = dose.material().isEmpty();
        String likely = byVolume ? figures.volume(litres.likely()) : figures.mass(kg.likely());
        String span = byVolume ? figures.volume(litres.low(), litres.high()) : figures.mass(kg.low(), kg.high());
        return span.equals(likely) ? likely : words.text("dose.span", likely, span);
    }

    private String likely(Band litres) {
        return words.figures().volume(litres.likely());
    }

    /** The same in buckets, barrows or spoons. */
    private String house(DoseAmount dose, Band litres, Pile pile) {
        Household household = new Household(measures(dose, pile));
        boolean limited = SPOONED.contains(dose.dose());
        Household.Measured told =
                household.ofLitres(litres.likely(), limited ? Household.Rounding.DOWN : Household.Rounding.NEAREST);
        MeasureInfo measure = words.knowledge().measures().get(told.measure());
        boolean one = told.count() <= 1;
        return words.text(
                "dose.house",
                count(told.count()),
                one ? measure.name().one() : measure.name().many());
    }

    private String count(double count) {
        long whole = (long) Math.floor(count);
        boolean half = count - whole > 0.25;
        return (whole > 0 ? whole + "" : "") + (half ? "½" : "");
    }

    private Map<String, Double> measures(DoseAmount dose, Pile pile) {
        boolean us = words.figures().units() == Units.US;
        List<String> ids;
        if (SPOONED.contains(dose.dose())) {
            ids = us ? POWDER_US : POWDER;
        } else if (dose.material().isEmpty() && dose.dose() != Dose.ENLARGE) {
            ids = us ? WATER_US : WATER;
        } else {
            ids = us ? BULK_US : BULK;
        }
        Map<String, Double> litres = new LinkedHashMap<>();
        for (String id : ids) {
            MeasureInfo info = words.knowledge().measures().get(id);
            if (info != null) {
                litres.put(id, pile.measures().getOrDefault(id, info.litres()));
            }
        }
        return litres;
    }

    /** The figures behind an amount in one sentence. */
    private Optional<String> working(DoseAmount dose) {
        List<String> told = new ArrayList<>();
        for (Term term : dose.working()) {
            String key = "term." + term.key().id();
            if (words.catalogue().has(key)) {
                told.add(words.text(key, value(term)));
            }
        }
        return told.isEmpty() ? Optional.empty() : Optional.of(words.text("dose.working", String.join("; ", told)));
    }

    private String value(Term term) {
        Figures figures = words.figures();
        double likely = term.value().likely();
        return switch (term.key().unit()) {
            case "kg" -> figures.mass(likely);
            case "g" -> figures.mass(likely / 1000);
            case "L" -> figures.volume(likely);
            case "m³" -> figures.pileVolume(likely);
            case "%" -> figures.round(likely) + " %";
            case "cm" -> figures.length(likely);
            case "m²" -> figures.number(likely, 1) + " m²";
            case "g/L" -> figures.round(likely) + " g/L";
            default -> figures.round(likely);
        };
    }
}
