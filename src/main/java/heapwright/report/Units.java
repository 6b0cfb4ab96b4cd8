package heapwright.report;

/** The system of units in which amounts are written. */
public enum Units {
    METRIC,
    US
}
