package heapwright.knowledge;

/**
 * A kind of stuff that stays out of a home pile, or goes in only with care. What belongs to a class, and what to do when
 * it is already in, stands in {@code rules/tables/keep-out-classes.json}: audit and checkup both read it there.
 */
public enum KeepOutClass implements Id {
    OIL_AND_PAINT,
    DEAD_ANIMALS,
    SEWAGE,
    DRY_TOILET,
    PET_WASTE,
    SICK_PLANTS,
    REPORTABLE_DISEASE,
    CREEPING_ROOTS,
    LISTED_PLANTS,
    BURNING_SAP,
    TREATED_WOOD,
    COAL_ASH,
    LITTER,
    ASBESTOS,
    NEEDLES,
    RAT_BAIT,
    OILY_RAGS,
    CAUSTIC_LIME,
    WEEDKILLER,
    ROAD_SALT,
    WEED_SEED,
    ANIMAL_FOOD,
    HARMS_ANIMALS,
    JUGLONE,
    NEEDS_CARE
}
