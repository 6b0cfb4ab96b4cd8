package heapwright.knowledge;

/**
 * What a careful practitioner says before a step. Words stand in {@code rules/tables/cautions.json}.
 */
public enum Caution implements Id {
    // breathing
    DUST_AND_SPORES,
    PEOPLE_AT_RISK,
    LET_OTHERS_OPEN,
    LEGIONELLA,
    FARMERS_LUNG,
    // infection
    GLOVES_AND_WASH,
    TETANUS,
    MANURE_HYGIENE,
    MANURE_AND_CHILDREN,
    OPEN_TUBS,
    RAW_MANURE_WAIT,
    RODENT_URINE,
    NOT_SANITISED,
    OUTLIVES_HEAT,
    WASH_PRODUCE,
    PET_WASTE_NEVER_ON_FOOD,
    MOULDY_FOOD_AND_DOGS,
    // chemicals
    ASH_CAUSTIC,
    ASH_EMBERS,
    ASH_SOURCE,
    ALKALI_APART_FROM_NITROGEN,
    UREA_HANDLING,
    UREA_STORAGE,
    UREA_SPILLS,
    FERTILISER_OXIDISER,
    AMMONIA_STOP_SIGN,
    SODIUM,
    // gas
    CLOSED_SPACE_GAS,
    NEVER_ENTER_PITS,
    NOSE_FAILS,
    CARBON_MONOXIDE,
    // fire and heat
    DO_NOT_OPEN_SMOKING,
    DO_NOT_CLIMB,
    CHECK_AGAIN_FOR_FIRE,
    HOT_CORE,
    HOT_WATER,
    BURNING_RULES,
    // tools and body
    SHREDDER,
    AXE_AND_SAW,
    FORK_AND_FEET,
    LIFTING,
    LET_OTHERS_LIFT,
    ICE_UNDERFOOT,
    COLD_HANDS,
    // law and neighbours
    KITCHEN_WASTE_RULES,
    KEPT_ANIMALS,
    DEAD_WILD_BIRDS,
    NOTIFIABLE_PESTS,
    INVASIVE_PLANTS,
    WATERCOURSE,
    TREATED_WOOD_DISPOSAL,
    HERBICIDE_TEST,
    SALT_AND_SEEDLINGS,
    PEST_CONTROL_RULES,
    WILDLIFE_IN_PILE,
    TOXIC_TO_STOCK,
    FROST_SLOWS_IT,
    FROZEN_GROUND_NO_SPREADING
}
