package heapwright.process.heat;

import com.fasterxml.jackson.databind.EnumNamingStrategies;
import com.fasterxml.jackson.databind.annotation.EnumNaming;
import java.util.List;

/**
 * A pile that somebody measured and told of in print: what was seen of it, what had to be guessed to set it up, and the
 * figures the model is compared with.
 *
 * @param id file name without its ending
 * @param half whether constants may be set on it
 * @param kind kind of pile
 * @param source where it stands and what was seen of it
 * @param pile size, walls and warmth at the start
 * @param recipe materials, parts by volume as filled by hand; the mix follows from it and the tables
 * @param mix the mix the recipe comes to, frozen so that a change of the tables does not move the score
 * @param weather air outdoors
 * @param days length of the run, days
 * @param events what was done, in order
 * @param guessed what the source does not say
 * @param figures what it does say
 */
record PublishedCourse(
        String id,
        Half half,
        Kind kind,
        Source source,
        Pile pile,
        List<Part> recipe,
        Mix mix,
        Climate weather,
        int days,
        List<Deed> events,
        List<String> guessed,
        List<PublishedFigure> figures) {

    PublishedCourse {
        recipe = List.copyOf(recipe);
        events = events == null ? List.of() : List.copyOf(events);
        guessed = List.copyOf(guessed);
        figures = List.copyOf(figures);
    }

    /** Volume as built, m³. */
    double volumeM3() {
        return pile.lengthM * pile.widthM * pile.heightM;
    }

    /** Courses are split in two by source, before any constant was moved because of them. */
    @EnumNaming(EnumNamingStrategies.KebabCaseStrategy.class)
    enum Half {
        /** May set constants. */
        SET,
        /** Never does: only looked at. */
        KEPT
    }

    /** Kind of pile. */
    @EnumNaming(EnumNamingStrategies.KebabCaseStrategy.class)
    enum Kind {
        HOME_BIN,
        FED_BIN,
        HOT_HEAP,
        MANURE,
        WINTER,
        CHIP_HEAP,
        WINDROW,
        LEAF_PILE;

        String words() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * A source.
     *
     * @param key the same for all courses of one source
     * @param by author or body
     * @param year when it appeared; null where not seen
     * @param title its title
     * @param address where it was seen
     * @param type kind of text: "journal abstract", "extension", "agency", "trade", "diary" and so on
     * @param seen what of it was read, and what it says
     * @param known "published", "published (quoted)" or "from memory"
     */
    record Source(
            String key, String by, Integer year, String title, String address, String type, String seen, String known) {
        boolean fromMemory() {
            return known.equals("from memory");
        }
    }

    /**
     * The pile as built.
     *
     * @param lengthM length, m
     * @param widthM width, m
     * @param heightM height of a box of the same volume, m
     * @param walls what holds it
     * @param base what it stands on
     * @param startC temperature throughout at the start, °C
     * @param top layers on top
     * @param round layers round the sides
     */
    record Pile(
            double lengthM,
            double widthM,
            double heightM,
            Walls walls,
            String base,
            double startC,
            List<Cover> top,
            List<Cover> round) {
        Pile {
            top = top == null ? List.of() : List.copyOf(top);
            round = round == null ? List.of() : List.copyOf(round);
        }
    }

    /** What holds a pile: as the product stands for the same containers, and three vessels of experiments. */
    @EnumNaming(EnumNamingStrategies.KebabCaseStrategy.class)
    enum Walls {
        BARE(Envelope.bare()),
        /** Bare wire: nothing but the shape. */
        WIRE(Envelope.bare()),
        SLATTED(Envelope.slatted()),
        CLOSED(new Envelope(0.1, 0.1, 0, 0.3, 0.2, 0.2, 0.1, 0.8)),
        INSULATED(new Envelope(0.8, 1.0, 0.3, 0.3, 0.2, 0.2, 0.1, 0.9)),
        /** Insulated, but air passes as through slats. */
        INSULATED_OPEN(new Envelope(0.8, 1.0, 0.3, 1, 0.7, 0.4, 0, 1)),
        /** Plastic with many holes, under a roof. */
        BARREL(new Envelope(0.1, 0.1, 0.1, 1, 1, 1, 0, 1)),
        /** Foam all round, holes in it, under a roof. */
        FOAMED(new Envelope(0.5, 0.5, 0.5, 1, 1, 1, 0, 1)),
        /** A bare heap under a roof. */
        ROOFED(new Envelope(0, 0, 0, 1, 1, 0.2, 0, 0.6));

        private final Envelope envelope;

        Walls(Envelope envelope) {
            this.envelope = envelope;
        }

        Envelope envelope() {
            return envelope;
        }
    }

    /**
     * A layer.
     *
     * @param of its material
     * @param cm its depth, cm; of no account for sheets
     */
    record Cover(String of, double cm) {
        Layer layer() {
            return switch (of) {
                case "straw" -> Layer.straw(cm / 100);
                case "snow" -> Layer.snow(cm / 100);
                case "finished-compost" -> Layer.finishedCompost(cm / 100);
                case "tarp" -> Layer.looseTarp();
                case "sheet" -> Layer.sealedSheet();
                default -> throw new IllegalArgumentException("no such layer: " + of);
            };
        }
    }

    /**
     * A material of a recipe.
     *
     * @param material id in the table of materials
     * @param parts parts by volume, as filled by hand
     */
    record Part(String material, double parts) {}

    /**
     * A mix: see {@link Matter}; {@code mineralShare} is the part of the nitrogen that is ammonium or urea.
     */
    record Mix(
            double densityKgM3,
            double moisture,
            double quick,
            double slow,
            double lignin,
            double carbonToNitrogen,
            double pieceCm,
            double acid,
            double mineralShare) {
        Matter matter(double volumeM3) {
            Matter m = Matter.of(volumeM3, densityKgM3, moisture, quick, slow, lignin, carbonToNitrogen, pieceCm)
                    .withAcid(acid);
            return new Matter(
                    m.dryKg(),
                    m.waterKg(),
                    quick,
                    slow,
                    lignin,
                    m.nitrogenKg(),
                    m.nitrogenKg() * mineralShare,
                    volumeM3,
                    pieceCm,
                    acid);
        }

        /** Organic matter as a share of dry matter. */
        double organic() {
            return quick + slow + lignin;
        }
    }

    /**
     * Air outdoors: either points between which it goes in straight lines, or monthly means from a day of the year on.
     *
     * @param points day and °C; null with monthly means
     * @param built "MM-dd"; null with points
     * @param monthlyC twelve means, °C; null with points
     */
    record Climate(List<List<Double>> points, String built, double[] monthlyC) {}

    /**
     * Something done.
     *
     * @param what "turn", "water", "add" or "cover"
     * @param day days after building
     * @param every repeated every so many days, or null
     * @param until last day of the repetition, or null
     * @param recipe of what is added
     * @param litres of what is added or poured
     * @param temperatureC of what is added, °C
     * @param mixed whether it is mixed through
     * @param mix of what is added
     * @param top layers of a new cover
     */
    record Deed(
            String what,
            int day,
            Integer every,
            Integer until,
            List<Part> recipe,
            double litres,
            double temperatureC,
            boolean mixed,
            Mix mix,
            List<Cover> top) {}
}
