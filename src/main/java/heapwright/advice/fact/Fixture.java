package heapwright.advice.fact;

/** What the person stated about place, container and aim, in the words the rules use. */
public enum Fixture {
    CLOSED_BIN,
    INSULATED_BIN,
    TUMBLER,
    PIT,
    TRENCH,
    LEAF_CAGE,
    WORM_BIN,
    BOKASHI,
    SNOW_COVER,
    NO_COVER,
    SEALED_COVER,
    INSULATION,
    RODENT_PROOF,
    CLOSED_SHED,
    NEAR_WATER,
    LOW_WET_GROUND,
    WINDY,
    KEEPS_ANIMALS,
    PETS_ABOUT,
    RATS_ABOUT,
    FOR_FOOD,
    FOR_SEEDLINGS
}
