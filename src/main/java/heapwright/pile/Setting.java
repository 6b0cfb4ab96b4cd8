package heapwright.pile;

/** What is special about the place and use of a pile; the rules read these as facts. */
public enum Setting implements Token {
    /** In a shed, garage or other closed room. */
    CLOSED_SHED,
    /** A stream, ditch, pond, spring or well is near. */
    NEAR_WATER,
    /** Water gathers where the pile stands. */
    LOW_WET_GROUND,
    /** Exposed to wind. */
    WINDY,
    /** Pigs, poultry, cattle, sheep or goats are kept here. */
    KEEPS_ANIMALS,
    /** Dogs or other pets can reach the pile. */
    PETS_ABOUT,
    /** Rats are known in the neighbourhood. */
    RATS_ABOUT
}
