package heapwright.knowledge;

/**
 * What a person can do. Words, labour, risk and dose stand in {@code rules/tables/remedies.json}.
 */
public enum Remedy implements Id {
    // danger
    CALL_FIRE_SERVICE,
    SPREAD_AND_WET,
    LEAVE_AND_AIR_SHED,
    // water
    MIX_IN_DRY_CARBON,
    ADD_WATER,
    WATER_THE_CORE,
    COVER_AGAINST_RAIN,
    RAISE_AND_DRAIN,
    CATCH_LEACHATE,
    REMOVE_STANDING_WATER,
    KEEP_SNOW_OUT,
    // air
    TURN_FULLY,
    LOOSEN_SIDES_AND_TOP,
    MAKE_AIR_HOLES,
    BREAK_UP_MATS,
    ADD_COARSE_BULKING,
    UNSEAL,
    MIX_THOROUGHLY,
    FIRM_AND_FILL,
    // food
    ADD_GREENS,
    ADD_MANURE,
    ADD_UREA,
    ADD_AMMONIUM_SULPHATE,
    ADD_MEAL,
    BIND_WITH_CARBON,
    STOP_ALKALI,
    DUST_WITH_ASH,
    SEED_WITH_COMPOST,
    SPREAD_OUT_ACID_FOOD,
    STOP_FAT_AND_BROTH,
    CHOP_COARSE,
    SOAK_WOODY,
    // heat
    ENLARGE_PILE,
    INSULATE,
    WAIT_FOR_THAW,
    STOP_OPENING,
    SPLIT_PILE,
    COOL_BY_TURNING,
    LEAVE_ALONE,
    MEASURE_CORE,
    SHELTER_FROM_WIND,
    // visitors and hygiene
    BURY_FOOD,
    COVER_WITH_COMPOST,
    RODENT_PROOF,
    FENCE_OUT_ANIMALS,
    TURN_AGAINST_FLIES,
    PULL_SPROUTS,
    CUT_ROOTS_AND_LINE,
    REMOVE_CONTAMINATED,
    REMOVE_DISEASED,
    ISOLATE_BATCH,
    BIOASSAY,
    DILUTE_SALT,
    ORNAMENTAL_ONLY,
    PROCESS_RAW_STORE,
    // finishing
    CURE,
    TEST_READINESS,
    SIEVE_AND_RETURN,
    USE_IT
}
