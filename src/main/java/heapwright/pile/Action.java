package heapwright.pile;

/** What a person did to the pile on a day. */
public enum Action implements Token {
    TURNED_FULLY,
    LOOSENED,
    HOLES_MADE,
    WATERED,
    COVERED,
    UNCOVERED,
    OPENED,
    INSULATED,
    MOVED,
    SIEVED,
    SPLIT,
    DRAINED,
    /** What must stay out was taken out. */
    TAKEN_OUT,
    /** Compost of it went on a bed, or was dug in there. */
    SPREAD
}
