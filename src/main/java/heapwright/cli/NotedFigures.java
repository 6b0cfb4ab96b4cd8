package heapwright.cli;

import heapwright.phrase.NumberPhrase;
import heapwright.pile.TypedEntry;
import heapwright.report.Units;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** Figures as they are told at the command line: a number, and a unit where it is not the usual one. */
final class NotedFigures {

    private static final Pattern FIGURE = Pattern.compile("(.*?[0-9\u00bd\u00bc\u00be])\\s*([\u00b0%\\p{L}]*)");

    @Option(names = "--core", paramLabel = "T", description = "Core temperature, such as 21 or 70F.")
    private String core;

    @Option(names = "--outdoor", paramLabel = "T", description = "Outdoor temperature, such as -3 or 27F.")
    private String outdoor;

    @Option(names = "--height", paramLabel = "LENGTH", description = "Height of the pile, such as 75cm or 30in.")
    private String height;

    @Option(names = "--moisture", paramLabel = "%", description = "Moisture by drying, percent of the wet mass.")
    private String moisture;

    @Option(names = "--ph", paramLabel = "PH", description = "pH of a sample, such as 6.5.")
    private String acidity;

    /**
     * What was measured, by the field of the document.
     *
     * @param units in which figures without a unit are meant
     * @throws UsageFault for what is no figure
     */
    Map<String, TypedEntry.Figure> measured(Units units) {
        boolean us = units == Units.US;
        Map<String, TypedEntry.Figure> all = new LinkedHashMap<>();
        put(all, "core", "--core", core, us ? "F" : "C", "21");
        put(all, "outdoor", "--outdoor", outdoor, us ? "F" : "C", "-3");
        put(all, "height", "--height", height, us ? "in" : "cm", "75cm");
        put(all, "moisture", "--moisture", moisture, "%", "55");
        put(all, "ph", "--ph", acidity, "pH", "6.5");
        return all;
    }

    private static void put(
            Map<String, TypedEntry.Figure> all, String field, String flag, String said, String usual, String example) {
        if (said == null) {
            return;
        }
        Matcher figure = FIGURE.matcher(said.strip());
        OptionalDouble number = figure.matches() ? NumberPhrase.number(figure.group(1)) : OptionalDouble.empty();
        if (number.isEmpty()) {
            throw new UsageFault(
                    "heapwright: " + flag + ": found \"" + said + "\". Allowed: a number, and its unit if it is"
                            + " not " + usual + ". Example: " + flag + " " + example);
        }
        String unit = figure.group(2).replace("\u00b0", "");
        all.put(field, new TypedEntry.Figure(number.getAsDouble(), unit.isEmpty() ? usual : unit));
    }
}
