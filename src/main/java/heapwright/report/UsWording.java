package heapwright.report;

import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts the metric quantities of a written sentence into US units, as a person there would say them: two significant
 * digits, whole degrees. Ratios such as kg per litre or kg/m³ stay as they are.
 */
final class UsWording implements UnaryOperator<String> {

    private static final String NUMBER = "[−-]?\\d+(?:\\.\\d+)?";
    private static final Pattern QUANTITY = Pattern.compile("(?<![\\d.,])(" + NUMBER + ")(?:(–| to | and )(" + NUMBER
            + "))?([ -])(°C|cm|mm|m³|m|kg|g|L)(?![\\w³²/])(?! (?:a|an|per) (?:litre|L\\b|m³|kg|square|cubic))");

    /** What stands before a difference of temperatures. */
    private static final Pattern DIFFERENCE = Pattern.compile("\\bby (?:about |more than |up to )?$");

    private static final double CM_PER_FOOT = 30.48;
    private static final double CM_PER_M = 100;
    /** From here a length is told in whole inches, or whole feet. */
    private static final double LEAST_WHOLE_CM = 5;

    private static final double LEAST_WHOLE_FEET = 2.5;
    private static final double MOST_EXACT_FEET = 100;
    private static final double MM_PER_CM = 10;
    private static final double G_PER_KG = 1000;

    private final Figures figures;

    UsWording(Catalogue catalogue) {
        this.figures = new Figures(Units.US, catalogue);
    }

    @Override
    public String apply(String sentence) {
        Matcher matcher = QUANTITY.matcher(sentence);
        StringBuilder said = new StringBuilder();
        while (matcher.find()) {
            boolean difference =
                    DIFFERENCE.matcher(sentence.substring(0, matcher.start())).find();
            String unit = difference && matcher.group(5).equals("°C") ? "K" : matcher.group(5);
            String low = said(number(matcher.group(1)), unit);
            String both = Optional.ofNullable(matcher.group(3))
                    .map(high -> joined(low, matcher.group(2), said(number(high), unit)))
                    .orElse(low);
            matcher.appendReplacement(said, Matcher.quoteReplacement(both));
        }
        return matcher.appendTail(said).toString();
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace('−', '-'));
    }

    /** Both ends with their word between, the unit once where it is the same. */
    private static String joined(String low, String between, String high) {
        int space = low.lastIndexOf(' ');
        boolean sameUnit = high.endsWith(low.substring(space));
        return (sameUnit ? low.substring(0, space) : low) + between + high;
    }

    private String feet(double feet) {
        boolean whole = feet >= LEAST_WHOLE_FEET && feet < MOST_EXACT_FEET;
        return (whole ? figures.number(feet, 0) : figures.round(feet)) + " ft";
    }

    private String said(double value, String unit) {
        return switch (unit) {
            case "°C" -> figures.temperature(value);
            case "K" -> figures.temperatureDifference(value);
            case "mm" -> figures.length(value / MM_PER_CM);
            case "cm" -> value < LEAST_WHOLE_CM ? figures.length(value) : figures.depth(value);
            case "m" -> feet(value * CM_PER_M / CM_PER_FOOT);
            case "m³" -> figures.pileVolume(value);
            case "L" -> figures.volume(value);
            case "kg" -> figures.mass(value);
            case "g" -> figures.mass(value / G_PER_KG);
            default -> throw new IllegalArgumentException("no unit of the tables: " + unit);
        };
    }
}
