package heapwright.advice.winter;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Id;
import java.util.EnumSet;
import java.util.Set;

/** What held a pile back, as the why answer names it. */
public enum Factor implements Id {
    NONE,
    COLD,
    FROZEN,
    HEAT,
    WATER,
    AIR,
    NITROGEN,
    ACID,
    PIECES,
    FOOD,
    /** Less than a cubic metre. */
    SIZE,
    /** No straw or leaves round it. */
    SHELTER,
    /** Built too late in the year. */
    TIME,
    /** Opened, turned or moved so often that the heat went. */
    HANDLING,
    /** Something that neither recipe nor record shows. */
    UNKNOWN;

    /** The factor behind a finding of the rules. */
    public static Factor behind(Cause cause) {
        return switch (cause) {
            case TOO_DRY, DRY_CORE -> WATER;
            case TOO_WET, RAIN_GETS_IN, POOR_DRAINAGE, TOO_LITTLE_AIR, COMPACTED, MATTED, SEALED_IN, FERMENTING -> AIR;
            case LACKS_NITROGEN -> NITROGEN;
            case ACID_START -> ACID;
            case COARSE_WOOD -> PIECES;
            case TOO_SMALL_FOR_COLD, SLOWED_BY_WINTER, TOO_AIRY -> COLD;
            case FROZEN_IN -> FROZEN;
            case DISTURBED_TOO_OFTEN -> HANDLING;
            case OVERHEATED, FIRE_RISK, TOO_LARGE -> HEAT;
            case SPENT, FINISHED, MATURING -> FOOD;
            case WORKING_WELL, JUST_BUILT, WORK_TOO_RECENT -> NONE;
            case POORLY_MIXED,
                    TOO_MUCH_NITROGEN,
                    TOO_ALKALINE,
                    FAT_COATED,
                    GAS_IN_CLOSED_SPACE,
                    SOMEBODY_HURT,
                    HAZARDOUS_WASTE,
                    WASPS_NEST,
                    FOOD_EXPOSED,
                    STANDING_WATER_BREEDS,
                    RUNOFF_LOSS,
                    WEED_SEEDS_ALIVE,
                    ROOTS_INVADING,
                    DISEASE_CARRIED,
                    HERBICIDE_RESIDUE,
                    SALT_LOAD,
                    CONTAMINATED,
                    PATHOGEN_RISK,
                    RAW_STORE_SMELLS,
                    HARMLESS_FUNGI,
                    HARMLESS_VISITORS,
                    COLD_BY_KIND,
                    WORMS_IN_TROUBLE,
                    FERMENT_SPOILT,
                    UNFINISHED -> UNKNOWN;
        };
    }

    /**
     * Whether a factor tells the same as a finding: what its cure puts right. Greens bring food with their nitrogen, chopping
     * gives more of the wood to eat, and what a small pile lacks in the cold is size, a wrapping or mild weather.
     */
    public boolean agrees(Cause cause) {
        Set<Factor> same =
                switch (cause) {
                    case LACKS_NITROGEN -> EnumSet.of(NITROGEN, FOOD);
                    case COARSE_WOOD -> EnumSet.of(PIECES, FOOD);
                    case TOO_SMALL_FOR_COLD, SLOWED_BY_WINTER, FROZEN_IN ->
                        EnumSet.of(SIZE, SHELTER, TIME, COLD, FROZEN);
                    case TOO_AIRY -> EnumSet.of(SHELTER, COLD, WATER);
                    default -> EnumSet.of(behind(cause));
                };
        return same.contains(this);
    }

    /** Whether a person could have mended it, unlike the weather. */
    boolean mendable() {
        return switch (this) {
            case WATER, AIR, NITROGEN, ACID, PIECES, FOOD -> true;
            default -> false;
        };
    }
}
