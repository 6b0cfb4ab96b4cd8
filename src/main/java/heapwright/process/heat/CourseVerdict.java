package heapwright.process.heat;

/** How a measured course compares with that of a healthy pile of its size in the same weather. */
public enum CourseVerdict {
    /** Warm, or as warm as a healthy one. */
    WORKING,
    /** Cold, but a healthy one would be as cold. */
    JUST_WINTER,
    /** Clearly colder than a healthy one for days. */
    SOMETHING_WRONG,
    /** Little is left to decay. */
    FINISHED
}
