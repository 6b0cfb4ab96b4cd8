package heapwright.knowledge;

/** Why compost is held to less than pots and seedlings; {@code ripeness.json} says to what. */
public enum RipeReason implements Id {
    DANGEROUS_STUFF,
    WEEDKILLER,
    WASTE_OF_PETS_OR_PEOPLE,
    NO_PROOF_OF_HEAT,
    SALT,
    SICK_PLANTS,
    WEED_SEED,
    WALNUT,
    FERMENT,
    FOUL_SMELL,
    HOT_MIDDLE,
    GREENS_STILL_GREEN,
    STILL_LAYERED,
    FRESH_STUFF,
    TOO_YOUNG,
    WARM_MIDDLE,
    WARMS_WHEN_MIXED,
    STILL_CURING,
    NEVER_HOT,
    ORIGINALS_VISIBLE,
    NOT_DARK,
    NO_EARTHY_SMELL,
    BITS_IN_IT,
    DRY_NOT_RIPE,
    FAILED_TEST,
    NOT_LOOKED_AT,
    NO_TEST_YET,
    NOT_RIPE_BY_ANY_SIGN
}
