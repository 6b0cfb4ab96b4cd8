package heapwright.pile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads where a pile stands, what holds it and what the compost is for. */
final class PlaceReader {

    private static final int MONTHS = 12;
    /** The coldest and the hottest month on record where people live are near −50 and 42 °C (from memory). */
    static final double COLDEST_MONTH = -60;

    static final double WARMEST_MONTH = 45;
    private static final double POLE = 90;
    private static final String MONTHS_EXAMPLE = "[-5, -6, -2, 4, 10, 15, 17, 16, 11, 6, 1, -3]";

    private PlaceReader() {}

    static Place place(Section section) {
        OptionalDouble latitude = section.field("latitude")
                .map(node -> section.number(node, -POLE, POLE, " degrees north", "60.2"))
                .orElse(OptionalDouble.empty());
        return new Place(
                latitude,
                section.token("climate", Place.Climate.values(), Place.Climate.UNKNOWN),
                section.quantity("altitude", Quantity.ALTITUDE),
                months(section),
                section.tokens("settings", Setting.values()));
    }

    private static List<Double> months(Section section) {
        List<Double> means = new ArrayList<>();
        List<Node> months = section.items("monthlyMeanC", MONTHS, MONTHS_EXAMPLE);
        for (Node month : months) {
            month(section, month).ifPresent(means::add);
        }
        if (!months.isEmpty() && months.size() != MONTHS) {
            section.field("monthlyMeanC")
                    .ifPresent(node -> section.findings()
                            .wrong(
                                    node,
                                    "a list of " + months.size() + " items",
                                    "the twelve means of January to December in °C, or none",
                                    MONTHS_EXAMPLE));
        }
        return means;
    }

    /** One mean; a figure that is too warm is asked about in Fahrenheit. */
    private static OptionalDouble month(Section section, Node month) {
        String allowed = "a figure from " + Shown.number(COLDEST_MONTH) + " to " + Shown.number(WARMEST_MONTH) + " °C";
        OptionalDouble mean = section.number(month, allowed, "-5");
        double celsius = mean.orElse(0);
        if (mean.isEmpty() || celsius >= COLDEST_MONTH && celsius <= WARMEST_MONTH) {
            return mean;
        }
        double meant = TemperatureUnit.FAHRENHEIT.to(TemperatureUnit.CELSIUS, celsius);
        section.findings()
                .wrong(
                        month,
                        month.shown(),
                        allowed,
                        "-5",
                        () -> celsius > WARMEST_MONTH && meant <= WARMEST_MONTH
                                ? Optional.of(Shown.number(Math.round(meant * 10) / 10.0))
                                : Optional.empty());
        return OptionalDouble.empty();
    }

    static Container container(Section section) {
        return new Container(
                section.token("kind", Container.Kind.values(), Container.Kind.UNKNOWN),
                section.quantity("length", Quantity.CONTAINER_LENGTH),
                section.quantity("width", Quantity.CONTAINER_LENGTH),
                section.quantity("height", Quantity.PILE_HEIGHT),
                section.quantity("volume", Quantity.PILE_VOLUME),
                section.token("cover", Container.Cover.values(), Container.Cover.UNKNOWN),
                section.token("base", Container.Base.values(), Container.Base.UNKNOWN),
                section.token("insulation", Container.Insulation.values(), Container.Insulation.UNKNOWN),
                section.flag("rodentProof"));
    }

    static Aim aim(Section section, Timeline timeline) {
        return new Aim(timeline.wish(section, "readyBy"), section.token("use", Aim.Use.values(), Aim.Use.UNKNOWN));
    }
}
