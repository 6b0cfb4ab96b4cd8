package heapwright.knowledge;

/** The calculation that gives a remedy its amount for one pile. */
public enum Dose implements Id {
    /** Dry carbon-rich material that takes up the surplus water. */
    SOAK_UP,
    /** Water that brings the whole pile to the target moisture. */
    WATER_TO_TARGET,
    /** Water that brings the dry core to the target moisture. */
    WATER_THE_CORE,
    /** Nitrogen as urea. */
    UREA,
    /** Nitrogen as ammonium sulphate. */
    AMMONIUM_SULPHATE,
    /** Nitrogen as a meal (blood, horn, feather). */
    MEAL,
    /** Nitrogen as manure. */
    MANURE,
    /** Nitrogen as fresh green material. */
    GREENS,
    /** Carbon-rich material that binds surplus nitrogen. */
    BIND_NITROGEN,
    /** Coarse woody material that opens air space. */
    BULKING,
    /** A dusting of wood ash, with its upper limit. */
    ASH,
    /** Mature compost as a starter. */
    STARTER,
    /** A thin cover of finished compost or soil. */
    COVER,
    /** Straw or leaves round and over the pile. */
    INSULATION,
    /** Fresh material that brings the pile to a size that holds heat. */
    ENLARGE,
    /** Water to soak dry woody stuff. */
    SOAK_WOODY
}
