package heapwright.knowledge;

/** Harm that followed from what was done to a pile. */
public enum Harm implements Id {
    /** The core fell after a turn in frost and did not come back. */
    COOLED_IN_FROST,
    /** Ammonia rises since nitrogen, ash or lime went in. */
    AMMONIA_AFTER_DOSE,
    /** It is soggy since it was watered. */
    WET_AFTER_WATER,
    /** It overheats since it was fed. */
    HOT_AFTER_FEED
}
