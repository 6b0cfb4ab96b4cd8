package heapwright.process.dose;

import heapwright.knowledge.Id;

/** Why a dose is smaller than the arithmetic alone would make it. */
public enum Cap implements Id {
    /** The figures show no need. */
    NO_NEED,
    /** None of the materials known would serve. */
    NO_MATERIAL,
    /** No more is at hand. */
    AT_HAND,
    /** More at once would be too much for a cubic metre; the rest comes in later doses or not at all. */
    PER_CUBIC_METRE,
    /** With what went in this season no more may be given. */
    SEASON,
    /** More would be too large a share of the pile. */
    SHARE_OF_PILE,
    /** More would make the pile too wet. */
    TOO_WET,
    /** So little of the need could be covered that it is not worth the work. */
    TOO_LITTLE
}
