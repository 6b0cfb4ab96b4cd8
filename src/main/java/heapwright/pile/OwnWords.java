package heapwright.pile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads what a person has defined in the document itself: sizes of measures, materials and limits. */
final class OwnWords {

    private static final Pattern ID = Pattern.compile("[a-z0-9]{1,40}(-[a-z0-9]{1,40}){0,9}");
    private static final String ID_ALLOWED =
            "an id of lower-case letters and digits, its words joined by hyphens, at most 60 characters";
    private static final int LONGEST_ID = 60;
    private static final double HIGHEST_RATIO = 2000;

    private final Lexicon lexicon;
    private final Findings findings;

    OwnWords(Lexicon lexicon, Findings findings) {
        this.lexicon = lexicon;
        this.findings = findings;
    }

    /** Litres of the household measures that the document redefines, by measure id. */
    Map<String, Double> measures(Section pile) {
        String example = "{\"bucket\": " + Quantity.MEASURE_VOLUME.example() + "}";
        Map<String, Double> measures = new HashMap<>();
        pile.entries("measures", "an object with the volumes of household measures", example)
                .forEach((word, node) -> {
                    Optional<String> id = lexicon.measure(word);
                    OptionalDouble litres = pile.quantity(node, Quantity.MEASURE_VOLUME);
                    if (id.isEmpty()) {
                        boolean fixed = Amounts.UNITS.find(word).isPresent();
                        findings.wrong(
                                node,
                                Shown.quoted(word) + (fixed ? ", a unit of fixed size" : ""),
                                "the id of a household measure, such as bucket",
                                example,
                                () -> fixed
                                        ? Optional.empty()
                                        : Closest.to(word, lexicon.measureWords())
                                                .flatMap(lexicon::measure));
                    } else if (measures.containsKey(id.get())) {
                        findings.wrong(node, id.get() + " a second time", "each measure once", example);
                    } else if (litres.isPresent()) {
                        measures.put(id.get(), litres.getAsDouble());
                    }
                });
        return measures;
    }

    /** The person's own figures for limits, by limit id. */
    Map<String, Double> limits(Section pile) {
        String example = "{\"moisture-good-high\": 62}";
        Map<String, Double> limits = new HashMap<>();
        pile.entries("limits", "an object with limits and your figures for them", example)
                .forEach((word, node) -> {
                    Optional<double[]> span = lexicon.limit(word);
                    if (span.isEmpty()) {
                        findings.wrong(
                                node,
                                Shown.quoted(word),
                                "the id of a limit, such as moisture-good-high",
                                example,
                                () -> lexicon.nearLimit(word));
                        return;
                    }
                    double low = span.get()[0];
                    double high = span.get()[1];
                    pile.number(node, low, high, "", Shown.number(low / 2 + high / 2))
                            .ifPresent(value -> limits.put(word, value));
                });
        return limits;
    }

    List<OwnMaterial> materials(Section pile) {
        List<OwnMaterial> materials = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        OwnChemistry chemistry = new OwnChemistry(lexicon, findings);
        for (Section section : pile.sections("materials", Shape.OWN_MATERIAL, Lists.MATERIALS)) {
            Optional<String> id = id(section);
            id.ifPresent(each -> {
                if (!ids.add(each)) {
                    section.field("id")
                            .ifPresent(node -> findings.wrong(
                                    node, node.shown() + " a second time", "each id once", "\"my-bark\""));
                }
            });
            Optional<String> like = like(section, id);
            String name = section.words("name", Words.NAME).orElse(id.orElse(""));
            OptionalDouble ratio = ratio(section);
            OptionalDouble carbon = section.quantity("carbon", Quantity.CARBON);
            OptionalDouble nitrogen = section.quantity("nitrogen", Quantity.NITROGEN);
            chemistry.check(section, id, like, new OwnChemistry.Stated(ratio, carbon, nitrogen));
            OptionalDouble moisture = section.quantity("moisture", Quantity.MATERIAL_MOISTURE);
            OptionalDouble density = section.quantity("density", Quantity.DENSITY);
            if (id.isPresent() && like.isPresent()) {
                materials.add(new OwnMaterial(id.get(), like.get(), name, ratio, carbon, nitrogen, moisture, density));
            }
        }
        return materials;
    }

    private Optional<String> id(Section section) {
        return section.needed("id", ID_ALLOWED, "\"my-bark\"").flatMap(node -> {
            Optional<String> id = section.string(node, ID_ALLOWED, "\"my-bark\"");
            if (id.isPresent()
                    && (id.get().length() > LONGEST_ID || !ID.matcher(id.get()).matches())) {
                findings.wrong(node, ID_ALLOWED, "\"my-bark\"");
                return Optional.empty();
            }
            return id;
        });
    }

    /** A known material's own figures need no {@code like}; a new material must say what it resembles. */
    private Optional<String> like(Section section, Optional<String> id) {
        String allowed = "the id of the known material it is most like, such as bark-softwood";
        if (section.field("like").isEmpty() && id.equals(id.flatMap(lexicon.materials()::named)) && id.isPresent()) {
            return id;
        }
        return section.needed("like", allowed, "\"bark-softwood\"").flatMap(node -> {
            Optional<String> word = section.string(node, allowed, "\"bark-softwood\"");
            Optional<String> known = word.flatMap(lexicon.materials()::named);
            if (word.isPresent() && known.isEmpty()) {
                String given = word.get();
                findings.wrong(
                        node,
                        node.shown(),
                        Inputs.allowed(lexicon.materials(), given, allowed),
                        "\"bark-softwood\"",
                        () -> Inputs.closest(lexicon.materials(), given, List.of()));
            }
            return known;
        });
    }

    private OptionalDouble ratio(Section section) {
        return section.field("carbonToNitrogen")
                .map(node -> section.number(node, 1, HIGHEST_RATIO, "", "54"))
                .orElse(OptionalDouble.empty());
    }
}
