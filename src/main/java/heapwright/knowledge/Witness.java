package heapwright.knowledge;

/**
 * What of a pile a piece of evidence bears witness to. The hand, the squeeze, a reading and the estimate from the recipe all
 * tell of one thing, its water, and are one witness: the best of them counts in full, what tells the same once more adds
 * little.
 */
public enum Witness implements Id {
    /** How much water it holds: squeeze, touch, a reading, what runs out, the recipe. */
    WATER,
    /** How warm it is or was: hand, thermometer, steam, the model that reads them. */
    WARMTH,
    /** How it lies: loose or dense, coarse or fine, in layers or mats. */
    STRUCTURE,
    SIZE,
    /** What went in, and what that makes of the mix. */
    INPUTS,
    SMELL,
    /** What it looks like: raw or dark, ash-grey, things that grow or lie in it. */
    LOOK,
    SHRINKAGE,
    /** What a trial with a bag or with seedlings says. */
    TRIAL,
    VISITORS,
    PLACE,
    WEATHER,
    AGE,
    /** What was done to it. */
    HANDLING,
    /** What came of a step that was tried. */
    TRIED,
    ACIDITY
}
