package heapwright.knowledge;

/**
 * What closes a pile, the gravest first. What it is called, what to do and what to ask stand in {@code
 * rules/tables/dangers.json}; the rules in {@code rules/danger} say when it stands.
 */
public enum Danger implements Id {
    HURT,
    FIRE,
    CARBON_MONOXIDE,
    GAS,
    EMBERS,
    WASTE,
    WASPS,
    HEAT
}
