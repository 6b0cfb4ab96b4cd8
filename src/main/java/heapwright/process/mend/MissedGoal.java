package heapwright.process.mend;

/** A goal that a plan does not reach. */
public enum MissedGoal {
    TOO_DRY,
    TOO_WET,
    TOO_MUCH_NITROGEN,
    TOO_LITTLE_NITROGEN,
    TOO_DENSE
}
