package heapwright.pile;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/** A few real ids, enough to test the reading of documents without the tables. */
public final class TestVocabulary implements Vocabulary {

    @Override
    public Collection<String> steps() {
        return List.of("turn-fully", "add-water", "mix-in-dry-carbon");
    }

    @Override
    public Collection<String> signs() {
        return List.of(
                "smells-sour",
                "smells-ammonia",
                "smells-rotten-egg",
                "smells-earthy",
                "squeeze-streams",
                "squeeze-drops",
                "squeeze-crumbles",
                "soggy",
                "dust-dry",
                "core-cold",
                "core-warm",
                "core-hot",
                "frost-crust",
                "frozen-through",
                "rodents");
    }

    @Override
    public Map<String, String> signAliases() {
        return Map.of("waterlogged", "soggy");
    }

    @Override
    public Collection<String> materials() {
        return List.of(
                "leaves-mixed",
                "leaves-oak",
                "grass-clippings",
                "kitchen-scraps",
                "corn-stalks",
                "straw-wheat",
                "sawdust",
                "bark-softwood",
                "manure-horse",
                "urea",
                "wood-ash",
                "cardboard");
    }

    @Override
    public Map<String, String> materialAliases() {
        return Map.of("lawn mowings", "grass-clippings", "carbamide", "urea");
    }

    @Override
    public Map<String, Double> measures() {
        return Map.of("bucket", 10.0, "wheelbarrow", 80.0, "tablespoon", 0.015, "cup", 0.25, "armful", 30.0);
    }

    @Override
    public Map<String, String> measureAliases() {
        return Map.of("pail", "bucket");
    }

    @Override
    public Map<String, double[]> limits() {
        return Map.of(
                "moisture-good-high", new double[] {40, 75},
                "cn-good-low", new double[] {10, 40},
                "turning-frost", new double[] {-30, 10});
    }
}
