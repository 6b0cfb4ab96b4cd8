package heapwright.advice.fact;

import heapwright.knowledge.Id;

/** What an audit judges in a recipe. */
public enum Topic implements Id {
    KEEP_OUT,
    CLASH,
    MOISTURE,
    CARBON_TO_NITROGEN,
    AIR,
    WEIGHT,
    PIECES,
    COARSE_STUFF,
    WOOD,
    MATTING,
    SIZE,
    SEASON,
    ASH,
    SOIL,
    SALT_AND_FAT,
    FERTILISER,
    LAYERS,
    COVER,
    PLACE,
    VISITORS
}
