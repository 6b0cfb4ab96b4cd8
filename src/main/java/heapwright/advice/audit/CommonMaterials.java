package heapwright.advice.audit;

import heapwright.knowledge.Material;
import heapwright.process.dose.Supply;
import heapwright.process.mixture.Materials;
import java.util.List;

/** What gardeners usually can get; asked which of it, or which two, would make a mend possible. */
final class CommonMaterials {

    /** Judgement. */
    private static final List<String> COMMON = List.of(
            "leaves-old-brown",
            "leaves-mixed",
            "straw-general",
            "cardboard",
            "chips-hardwood",
            "grass-clippings",
            "kitchen-scraps",
            "coffee-grounds",
            "manure-horse-straw",
            "manure-hen-home");

    private CommonMaterials() {}

    /** What of it the day gives. */
    static List<Material> of(Materials materials, Supply supply) {
        return COMMON.stream()
                .flatMap(id -> materials.find(id).stream())
                .filter(supply::gives)
                .toList();
    }
}
