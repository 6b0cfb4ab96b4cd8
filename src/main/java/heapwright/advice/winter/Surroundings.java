package heapwright.advice.winter;

import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.pile.Setting;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Layer;

/** What stands round a pile, as layers. Depths where the file gives none are judgement. */
final class Surroundings {

    private static final double STRAW_M = 0.15;
    private static final double FOAM_M = 0.04;
    private static final double BOARD_M = 0.025;
    private static final double SNOW_M = 0.25;

    private Surroundings() {}

    /** @param sealed whether it was seen to be sealed under plastic */
    static Envelope of(Pile pile, boolean sealed) {
        Container c = pile.container();
        Envelope round = round(c.insulation(), base(c.base(), kind(c.kind())));
        return cover(sealed ? Container.Cover.SEALED_PLASTIC : c.cover(), round);
    }

    private static Envelope kind(Container.Kind kind) {
        return switch (kind) {
            case OPEN_HEAP, UNKNOWN -> Envelope.bare();
            case SLATTED_BIN, WIRE_RING, LEAF_CAGE -> Envelope.slatted();
            case CLOSED_BIN, FED_BIN, WORM_BIN, BOKASHI -> new Envelope(0.1, 0.1, 0, 0.3, 0.2, 0.2, 0.1, 0.8);
            case INSULATED_BIN -> new Envelope(0.8, 1.0, 0.3, 0.3, 0.2, 0.2, 0.1, 0.9);
            case TUMBLER -> new Envelope(0.1, 0.1, 0.2, 0.4, 0.4, 0.4, 0.05, 0.3);
            case PIT, TRENCH -> new Envelope(0, 0.6, 0, 1, 0.1, 0.1, 1, 0.9);
        };
    }

    private static Envelope base(Container.Base base, Envelope e) {
        return switch (base) {
            case COARSE_BRUSH, PALLET -> e.bedded(Layer.brush());
            case PAVING, PLASTIC ->
                new Envelope(
                        e.topResistance(),
                        e.sideResistance(),
                        e.groundResistance(),
                        e.topOpen(),
                        e.sideOpen(),
                        0,
                        e.rainShare(),
                        e.shelter());
            case SOIL, UNKNOWN -> e;
        };
    }

    static Envelope round(Container.Insulation insulation, Envelope e) {
        return switch (insulation) {
            case STRAW, LEAVES -> e.wrapped(Layer.straw(STRAW_M));
            case FOAM -> e.wrapped(Layer.foam(FOAM_M));
            case WOOD -> e.wrapped(Layer.boards(BOARD_M));
            case SNOW_BANK -> e.wrapped(Layer.snow(SNOW_M));
            case EARTH -> e.wrapped(new Layer(0.3, 0.1, 1));
            case NONE, UNKNOWN -> e;
        };
    }

    private static Envelope cover(Container.Cover cover, Envelope e) {
        return switch (cover) {
            case LID, BOARDS_OR_ROOF -> e.topped(Layer.boards(BOARD_M));
            case BREATHING_FLEECE -> e.topped(new Layer(0.1, 0.8, 0.3));
            case STRAW_OR_LEAVES -> e.topped(Layer.straw(STRAW_M));
            case FINISHED_COMPOST -> e.topped(Layer.finishedCompost(0.05));
            case LOOSE_TARP -> e.topped(Layer.looseTarp());
            case SEALED_PLASTIC -> sealed(e);
            case SNOW -> e.topped(Layer.snow(0.1));
            case NONE, UNKNOWN -> e;
        };
    }

    /** A sheet that is tight shuts the sides too. */
    private static Envelope sealed(Envelope e) {
        return e.topped(Layer.sealedSheet()).wrapped(new Layer(0.05, 0.1, 0));
    }

    /** As it is, but with the top and sides open to the air. */
    static Envelope unsealed(Envelope e) {
        return new Envelope(
                e.topResistance(),
                e.sideResistance(),
                e.groundResistance(),
                Math.max(e.topOpen(), 0.6),
                Math.max(e.sideOpen(), 0.5),
                e.groundOpen(),
                Math.min(e.rainShare(), 0.2),
                e.shelter());
    }

    /** As it is, with straw or leaves a hand's width and more on top and round it. */
    static Envelope insulated(Envelope e) {
        Layer straw = Layer.straw(Plan.INSULATION_CM / 100);
        return e.topped(straw).wrapped(straw);
    }

    /** As it is, behind a screen against the wind. */
    static Envelope sheltered(Envelope e) {
        return new Envelope(
                e.topResistance(),
                e.sideResistance(),
                e.groundResistance(),
                e.topOpen(),
                e.sideOpen(),
                e.groundOpen(),
                e.rainShare(),
                Math.max(e.shelter(), 0.8));
    }

    /** Wind round the pile, m/s. */
    static double wind(Pile pile) {
        return pile.place().settings().contains(Setting.WINDY) ? 4 : 2;
    }
}
