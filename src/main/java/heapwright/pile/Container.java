package heapwright.pile;

import java.util.OptionalDouble;

/**
 * What holds the pile. Lengths in metres, volume in cubic metres; absent figures are unknown, not zero.
 *
 * @param kind the kind of container
 * @param lengthM inner length
 * @param widthM inner width
 * @param heightM inner height, or the height of a free heap when built
 * @param volumeM3 volume of the material when built; overrides length x width x height
 * @param cover what lies on top
 * @param base what it stands on
 * @param insulation what is round it
 * @param rodentProof whether base and sides are closed with fine welded mesh
 */
public record Container(
        Kind kind,
        OptionalDouble lengthM,
        OptionalDouble widthM,
        OptionalDouble heightM,
        OptionalDouble volumeM3,
        Cover cover,
        Base base,
        Insulation insulation,
        boolean rodentProof) {

    /** The kind of container. */
    public enum Kind implements Token {
        OPEN_HEAP,
        SLATTED_BIN,
        WIRE_RING,
        CLOSED_BIN,
        INSULATED_BIN,
        TUMBLER,
        PIT,
        /** Food dug into the bed, a spade deep. */
        TRENCH,
        /** A bin that takes the scraps as they come and is seldom full at once. */
        FED_BIN,
        /** Wire or netting round leaves alone. */
        LEAF_CAGE,
        /** Worms in bedding, which must stay cool. */
        WORM_BIN,
        /** A tight bucket in which food is soured with bran. */
        BOKASHI,
        UNKNOWN;

        /** Whether it is filled little by little and works without heat, in earth, by worms or by souring. */
        public boolean worksCold() {
            return this == TRENCH || this == WORM_BIN || this == BOKASHI;
        }
    }

    /** What lies on top. */
    public enum Cover implements Token {
        NONE,
        LID,
        BREATHING_FLEECE,
        STRAW_OR_LEAVES,
        FINISHED_COMPOST,
        BOARDS_OR_ROOF,
        LOOSE_TARP,
        SEALED_PLASTIC,
        SNOW,
        UNKNOWN
    }

    /** What it stands on. */
    public enum Base implements Token {
        SOIL,
        COARSE_BRUSH,
        PALLET,
        PAVING,
        PLASTIC,
        UNKNOWN
    }

    /** What is round the sides. */
    public enum Insulation implements Token {
        NONE,
        STRAW,
        LEAVES,
        FOAM,
        WOOD,
        SNOW_BANK,
        EARTH,
        UNKNOWN
    }

    public static Container unknown() {
        return new Container(
                Kind.UNKNOWN,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Cover.UNKNOWN,
                Base.UNKNOWN,
                Insulation.UNKNOWN,
                false);
    }

    /** Volume in cubic metres from the stated volume or the three lengths, if known. */
    public OptionalDouble builtVolumeM3() {
        if (volumeM3.isPresent()) {
            return volumeM3;
        }
        if (lengthM.isPresent() && widthM.isPresent() && heightM.isPresent()) {
            return OptionalDouble.of(lengthM.getAsDouble() * widthM.getAsDouble() * heightM.getAsDouble());
        }
        return OptionalDouble.empty();
    }
}
