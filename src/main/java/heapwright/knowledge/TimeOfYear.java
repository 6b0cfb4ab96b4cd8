package heapwright.knowledge;

/**
 * A time of the year by the warmth outdoors, after the thermal seasons of the Nordic weather services: winter below 0 °C,
 * summer above 10 °C, and between them, with the growing season's 5 °C as a mark, two halves of spring and of autumn.
 */
public enum TimeOfYear implements Id {
    /** The mean is below freezing. */
    DEEP_WINTER,
    /** It rises, up to 5 °C: the ground opens. */
    THAW,
    /** It rises from 5 to 10 °C. */
    SPRING,
    /** It is above 10 °C. */
    SUMMER,
    /** It falls from 10 to 5 °C: the leaves are down. */
    AUTUMN,
    /** It falls below 5 °C: the last weeks before the frost. */
    BEFORE_FROST
}
