package heapwright.accepted;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds figures in a text that make no sense to a reader, whatever the pile. */
final class Sense {

    /** A number in running text: not a part of a date, a word or an id. */
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.:-])\\d[\\d,]*(?:\\.\\d+)?");

    private static final Pattern PERCENT = Pattern.compile("(\\d[\\d.,]*) %");

    /** Nobody reads or measures more digits than these of a quantity. */
    private static final int MOST_DIGITS = 5;

    private static final int MOST_DECIMALS = 3;

    private Sense() {}

    /** What is wrong with the figures of a text, a line each. */
    static List<String> lacking(String text) {
        List<String> lacking = new ArrayList<>();
        for (String line : text.split("\n")) {
            if (line.contains("NaN") || line.contains("Infinity") || line.contains("\u221e")) {
                lacking.add("no number: " + line.strip());
            }
            Matcher percent = PERCENT.matcher(line);
            while (percent.find()) {
                if (value(percent.group(1)) > 100 && !mayGrow(line)) {
                    lacking.add("more than the whole: " + line.strip());
                }
            }
            Matcher number = NUMBER.matcher(line);
            while (number.find()) {
                if (absurd(number.group())) {
                    lacking.add("absurd digits " + number.group() + ": " + line.strip());
                }
            }
        }
        return lacking;
    }

    /** Where more than the whole is what the sentence complains of. A pile can weigh and fill more than it does today, once rain and snow are counted; the line says against what. */
    private static boolean mayGrow(String line) {
        return line.contains("against today") || line.contains("imply");
    }

    private static boolean absurd(String number) {
        String plain = number.replace(",", "");
        int point = plain.indexOf('.');
        int decimals = point < 0 ? 0 : plain.length() - point - 1;
        String digits = plain.replace(".", "").replaceAll("^0+", "").replaceAll("0+$", "");
        return decimals > MOST_DECIMALS || digits.length() > MOST_DIGITS;
    }

    private static double value(String number) {
        return Double.parseDouble(number.replace(",", "").replaceAll("\\.$", ""));
    }
}
