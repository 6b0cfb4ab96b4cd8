package heapwright.knowledge;

/** How a figure or a rule is known; shown wherever the figure is shown. */
public enum Known implements Id {
    /** Measured on this pile. */
    MEASURED,
    /** The text of the source was seen. */
    PUBLISHED,
    /** A part of the source (an abstract, a page) was seen. */
    PUBLISHED_PART,
    /** Seen as quoted by another published source. */
    QUOTED,
    /** Not seen; to be checked against print before it is cited. */
    FROM_MEMORY,
    /** Our arithmetic from other figures. */
    DERIVED,
    /** A fact of the trade without a source. */
    COMMON_PRACTICE,
    /** Our own judgement. */
    JUDGEMENT
}
