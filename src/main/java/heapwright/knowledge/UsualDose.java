package heapwright.knowledge;

/** What people usually give, without reckoning (common practice, no source). */
public enum UsualDose implements Id {
    /** A litre of wood ash for each cubic metre. */
    ASH_BY_THE_LITRE,
    /** Two matchboxes of urea in ten litres of water. */
    UREA_BY_THE_MATCHBOX,
    /** Two tablespoons of baking soda on the surface. */
    BAKING_SODA,
    /** Ten grams of dried yeast and two tablespoons of sugar in ten litres of warm water. */
    YEAST_AND_SUGAR,
    /** A litre of salted broth or soup. */
    BROTH,
    /** A litre of garden lime for each cubic metre, strewn on the layers. */
    LIME_ON_THE_LAYERS,
    /** A bucket of garden soil for each cubic metre, strewn on the layers. */
    SOIL_ON_THE_LAYERS
}
