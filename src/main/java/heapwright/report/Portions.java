package heapwright.report;

import heapwright.knowledge.Material;
import heapwright.knowledge.Material.Group;
import heapwright.knowledge.Trait;
import heapwright.pile.OwnMaterial;
import heapwright.pile.Pile;
import heapwright.process.dose.Household.Rounding;
import heapwright.process.mend.Offer;
import heapwright.process.mixture.Density;
import java.util.List;
import java.util.Optional;

/** Tells how much of a material, in the measure that a person would take it with. */
final class Portions {

    /** From here on a barrow is easier to count than buckets, litres; judgement. */
    private static final double BARROW_FROM_L = 150;

    /** Powder beyond this goes by the bucket, litres; judgement. */
    private static final double SPOONS_UP_TO_L = 3;

    /** Stuff as wet and heavy as this pours, percent and kg per cubic metre; judgement. */
    private static final double POURS_PCT = 90;

    private static final double POURS_KG_M3 = 900;

    private final Words words;
    private final Pile pile;
    private final Measures measures;

    Portions(Words words, Pile pile) {
        this.words = words;
        this.pile = pile;
        this.measures = new Measures(words, pile);
    }

    /** So many litres of a material: buckets and barrows of bulky stuff, cups and spoons of powder. */
    String of(String material, double litres) {
        return of(material, litres, Rounding.NEAREST);
    }

    /** So many litres of bulky stuff of no one kind. */
    String bulky(double litres) {
        return measures.tell(litres, Measures.Kind.LAYER, Rounding.NEAREST);
    }

    /** The same where an upper limit holds: never more than that. */
    String atMost(String material, double litres) {
        return of(material, litres, Rounding.DOWN);
    }

    private String of(String material, double litres, Rounding rounding) {
        if (material.equals(Offer.WATER)) {
            return measures.tell(litres, Measures.Kind.WATER, Rounding.NEAREST);
        }
        Measures.Kind kind = kind(material, litres);
        String told = measures.tell(litres, kind, rounding);
        return kind == Measures.Kind.LAYER && litres >= BARROW_FROM_L
                ? words.text("audit.barrows", told, measures.tell(litres, Measures.Kind.BULK, Rounding.NEAREST))
                : told;
    }

    private Measures.Kind kind(String id, double litres) {
        Optional<Material> material = material(id);
        if (material.isEmpty()) {
            return Measures.Kind.LAYER;
        }
        Material m = material.get();
        if (m.moisturePct().typical() >= POURS_PCT && Density.byHand(m).likely() >= POURS_KG_M3) {
            return Measures.Kind.WATER;
        }
        boolean powder = (m.group() == Group.MEAL || m.group() == Group.AMENDMENT || m.group() == Group.MINERAL)
                && !m.traits().contains(Trait.SOIL);
        return powder && litres <= SPOONS_UP_TO_L ? Measures.Kind.POWDER : Measures.Kind.LAYER;
    }

    /** What one or two materials are called inside a sentence. */
    String names(List<String> ids) {
        return ids.stream()
                .map(this::name)
                .reduce((one, other) -> words.text("audit.both", one, other))
                .orElse("");
    }

    /** What a material is called inside a sentence: the person's own name for it where they gave one. */
    String name(String id) {
        if (id.equals(Offer.WATER)) {
            return words.text("dose.thing.water");
        }
        Optional<OwnMaterial> own = own(id);
        return own.isPresent() && !words.knowledge().materials().containsKey(id)
                ? own.get().name()
                : words.knowledge().material(id).map(words::thing).orElse(id);
    }

    private Optional<Material> material(String id) {
        return words.knowledge()
                .material(id)
                .or(() -> own(id).flatMap(o -> words.knowledge().material(o.like())));
    }

    private Optional<OwnMaterial> own(String id) {
        return pile.materials().stream().filter(o -> o.id().equals(id)).findFirst();
    }
}
