package heapwright.pile;

/** What to fetch for a step besides the stuff that its amount names: tools, and what is used by the way. */
public enum Gear implements Token {
    BAG,
    BEDDING,
    BOARDS,
    BROOM,
    CAN,
    FENCE,
    FORK,
    HOE,
    HOSE,
    LABEL,
    LEAVES,
    LIDDED_BUCKET,
    MESH,
    METAL_BIN,
    MOWER,
    POTS,
    SCALES,
    SHEARS,
    SHEET,
    SIEVE,
    SNIPS,
    SPADE,
    SPOON,
    STAKE,
    STICKS,
    STRING,
    THERMOMETER,
    TUB
}
