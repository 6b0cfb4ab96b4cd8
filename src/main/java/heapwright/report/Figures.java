package heapwright.report;

import heapwright.process.heat.Range;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Writes quantities for people: rounded to what a bucket and a spoon can measure, with unit, metric or US. Factors are
 * the exact definitions of the international yard and pound and the US gallon.
 */
public final class Figures {

    private static final double KG_PER_LB = 0.45359237;
    private static final double G_PER_OZ = 28.349523125;
    private static final double L_PER_GAL = 3.785411784;
    private static final double L_PER_QT = L_PER_GAL / 4;
    private static final double CM_PER_IN = 2.54;
    private static final double L_PER_CUBIC_YARD = 764.554857984;
    private static final double L_PER_CUBIC_METRE = 1000;
    private static final double KG_M3_PER_LB_YD3 = KG_PER_LB / (L_PER_CUBIC_YARD / L_PER_CUBIC_METRE);
    private static final double SQUARE_METRE_PER_SQUARE_FOOT = 0.09290304;
    private static final double GRAMS = 1000;

    /** As many digits as a document keeps. */
    private static final MathContext SETTLED = new MathContext(9);

    /** Less than a hundredth of any unit in which something is told is nothing that a person can measure. */
    private static final double LEAST = 0.01;

    /** From here on the volume of a pile is told in two digits; no home pile is that large. */
    private static final double DIGITS_FROM = 100;

    /** The same for a bulk density. */
    private static final double DENSITY_DIGITS_FROM = 10_000;

    /** Less than this much of a cubic metre or yard is told in litres or gallons. */
    private static final double LEAST_VOLUME = 0.1;

    private static final double MOST_TIMES = 1000;

    private final Units units;
    private final Catalogue catalogue;

    public Figures(Units units, Catalogue catalogue) {
        this.units = units;
        this.catalogue = catalogue;
    }

    public Units units() {
        return units;
    }

    /** A mass in kilograms, as kg or g, or as lb or oz. */
    public String mass(double kg) {
        if (units == Units.US) {
            double lb = kg / KG_PER_LB;
            return lb >= 1 ? round(lb) + " lb" : round(kg * GRAMS / G_PER_OZ) + " oz";
        }
        return kg >= 1 ? round(kg) + " kg" : round(kg * GRAMS) + " g";
    }

    /** A span of masses in kilograms. */
    public String mass(double lowKg, double highKg) {
        return span(mass(lowKg), mass(highKg));
    }

    /** A volume in litres, as L or mL, or as gal or qt. */
    public String volume(double litres) {
        if (units == Units.US) {
            return litres >= L_PER_GAL ? round(litres / L_PER_GAL) + " gal" : round(litres / L_PER_QT) + " qt";
        }
        return litres >= 1 ? round(litres) + " L" : round(litres * 1000) + " mL";
    }

    /** A span of volumes in litres. */
    public String volume(double lowLitres, double highLitres) {
        return span(volume(lowLitres), volume(highLitres));
    }

    /** The volume of a pile in cubic metres, or in cubic yards. */
    public String pileVolume(double cubicMetres) {
        boolean us = units == Units.US;
        double told = us ? cubicMetres * L_PER_CUBIC_METRE / L_PER_CUBIC_YARD : cubicMetres;
        if (Math.abs(told) < LEAST_VOLUME && told != 0) {
            return volume(cubicMetres * L_PER_CUBIC_METRE);
        }
        return (told < DIGITS_FROM ? number(told, 1) : round(told)) + (us ? " yd³" : " m³");
    }

    /** A temperature in degrees Celsius, or in Fahrenheit. */
    public String temperature(double celsius) {
        return units == Units.US ? number(celsius * 9 / 5 + 32, 0) + " °F" : number(celsius, 0) + " °C";
    }

    /** A difference of temperatures in kelvin, in degrees Celsius or Fahrenheit. */
    public String temperatureDifference(double kelvin) {
        return units == Units.US ? number(kelvin * 9 / 5, 0) + " °F" : number(kelvin, 0) + " °C";
    }

    /** A length in centimetres, or in inches. */
    public String length(double cm) {
        if (units == Units.US) {
            return round(cm / CM_PER_IN) + " in";
        }
        return cm >= 100 ? round(cm / 100) + " m" : round(cm) + " cm";
    }

    /** How deep a layer lies, in whole centimetres or inches; nobody lays one finer. */
    public String depth(double cm) {
        return units == Units.US ? number(Math.max(1, cm / CM_PER_IN), 0) + " in" : number(Math.max(1, cm), 0) + " cm";
    }

    /** A span of areas in square metres, or in square feet. */
    public String area(double lowM2, double highM2) {
        double perUnit = units == Units.US ? SQUARE_METRE_PER_SQUARE_FOOT : 1;
        String unit = units == Units.US ? " ft²" : " m²";
        return span(round(lowM2 / perUnit) + unit, round(highM2 / perUnit) + unit);
    }

    /** A bulk density in kg per cubic metre, or in lb per cubic yard. */
    public String density(double kgM3) {
        return units == Units.US ? dense(kgM3 / KG_M3_PER_LB_YD3) + " lb/yd³" : dense(kgM3) + " kg/m³";
    }

    private String dense(double density) {
        return density < DENSITY_DIGITS_FROM ? number(density, 0) : round(density);
    }

    /** A number with a fixed count of decimals. */
    public String number(double value, int decimals) {
        String told = String.format(catalogue.locale(), "%." + decimals + "f", settled(value) + 0.0);
        return told.matches("-0(\\.0*)?") ? told.substring(1) : told;
    }

    /** How many times something is; beyond a thousand the count itself says nothing more. */
    public String times(double value) {
        return value > MOST_TIMES ? catalogue.text("figure.over", round(MOST_TIMES)) : round(value);
    }

    /**
     * Two significant digits: more would pretend to an accuracy that no bucket has. What lies nearer to zero than a
     * hundredth is only told to be less than that.
     */
    public String round(double value) {
        if (value == 0) {
            return "0";
        }
        if (Math.abs(value) < LEAST) {
            return catalogue.text("figure.under", number(LEAST, 2));
        }
        int magnitude = (int) Math.floor(Math.log10(Math.abs(value)));
        double step = Math.pow(10, magnitude - 1.0);
        double rounded = Math.round(settled(value / step)) * step;
        return number(rounded, Math.max(0, 1 - (int) Math.floor(Math.log10(Math.abs(rounded)))));
    }

    /** Without the last digits, which hang on the order in which a sum was added up: at a half they would turn it. */
    private static double settled(double value) {
        return Double.isFinite(value) ? new BigDecimal(value).round(SETTLED).doubleValue() : value;
    }

    /**
     * A likely amount with its span behind it: "5 kg (3–9 kg)". Where it is told like an end of its span, only the other
     * end is, since nobody can tell what "9 kg (3–9 kg)" means.
     */
    String within(String likely, String low, String high) {
        return within(likely, low, high, span(low, high));
    }

    /** The same for days and other counts: "5 (3 to 9)". */
    String count(Range days) {
        String low = number(days.low(), 0);
        String high = number(days.high(), 0);
        return within(number(days.likely(), 0), low, high, catalogue.text("figure.to", low, high));
    }

    /** The same, with the whole span in these words where both its ends are told. */
    String within(String likely, String low, String high, String both) {
        if (low.equals(high)) {
            return likely;
        }
        if (likely.equals(low)) {
            return catalogue.text("figure.within", likely, catalogue.text("figure.up-to", high));
        }
        return catalogue.text(
                "figure.within", likely, likely.equals(high) ? catalogue.text("figure.at-least", low) : both);
    }

    /** A temperature with its span, short enough for a column: "5 °C (3 to 9)". */
    public String temperature(double low, double likely, double high) {
        String from = degrees(low);
        String told = degrees(likely);
        String to = degrees(high);
        if (from.equals(to)) {
            return temperature(likely);
        }
        String span = told.equals(from)
                ? catalogue.text("figure.up-to", to)
                : told.equals(to) ? catalogue.text("figure.from", from) : catalogue.text("figure.to", from, to);
        return catalogue.text("figure.within", temperature(likely), span);
    }

    private String degrees(double celsius) {
        String told = temperature(celsius);
        return told.substring(0, told.indexOf(' '));
    }

    /** Two amounts as a span, the unit once where it is the same. */
    public String span(String low, String high) {
        if (low.equals(high)) {
            return low;
        }
        int lowSpace = low.lastIndexOf(' ');
        int highSpace = high.lastIndexOf(' ');
        boolean sameUnit =
                lowSpace > 0 && highSpace > 0 && low.substring(lowSpace).equals(high.substring(highSpace));
        return (sameUnit ? low.substring(0, lowSpace) : low) + "–" + high;
    }
}
