package heapwright.knowledge;

/**
 * What a material does in a pile or why it must stay out. Each material in {@code rules/tables/materials.json} carries some.
 */
public enum Trait implements Id {
    // what it is
    GREEN,
    BROWN,
    WOODY,
    GRASS,
    LEAVES,
    SAWDUST,
    PAPER,
    STALKS,
    MANURE,
    KITCHEN,
    FRUIT,
    CITRUS,
    MEAL,
    STARTER,
    SOIL,
    COARSE,
    MATTING,
    WET,
    // handle with care
    COOKED,
    MEAT_OR_DAIRY,
    CARCASS,
    FAT,
    BROTH,
    ALKALI,
    ASH,
    FAST_NITROGEN,
    NITRATE,
    SODIUM,
    SALTED,
    TANNIN,
    SEEDS,
    TUBERS,
    HAY,
    // keep out
    RUNNING_ROOTS,
    DISEASED,
    NOTIFIABLE,
    INVASIVE,
    HERBICIDE_SUSPECT,
    PET_WASTE,
    HUMAN_WASTE,
    TREATED_WOOD,
    COATED_PAPER,
    PLASTIC,
    COAL_ASH,
    TOXIC_PLANT,
    QUICKLIME,
    BONES,
    OIL,
    JUGLONE
}
