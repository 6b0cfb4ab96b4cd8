package heapwright.knowledge;

/**
 * Where a piece of evidence comes from. Within one origin only the strongest piece counts, so that one observation told twice is not believed twice.
 */
public enum Origin implements Id {
    SMELL,
    SQUEEZE,
    TOUCH,
    WARMTH,
    SIGHT,
    VISITORS,
    INPUTS,
    PLACE,
    WEATHER,
    TIME,
    MOISTURE,
    MIXTURE,
    STRUCTURE,
    TEMPERATURE,
    ACIDITY,
    SIZE,
    HANDLING,
    PRODUCT
}
