package heapwright.logger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which column tells what, by the plain words of its name.
 *
 * @param stamp the column of the day, with the time or without
 * @param clock the column of the time where it stands by itself; -1 where it does not
 * @param core columns of core temperatures
 * @param outdoor columns of outdoor temperatures
 * @param fahrenheit for each column whether its name says °F; empty where it names no unit
 * @param universal whether the name of the time says UTC and no hours from it
 */
record Columns(
        int stamp,
        int clock,
        List<Integer> core,
        List<Integer> outdoor,
        List<Optional<Boolean>> fahrenheit,
        boolean universal) {

    private static final Pattern TIME =
            Pattern.compile(".*\\b(date|time|timestamp|datetime|epoch)\\b.*", Pattern.DOTALL);
    private static final Pattern OTHER = Pattern.compile(
            ".*(humid|\\brh\\b|%|batter|volt|dew|pressure|signal|rssi|serial|button|event|moisture|status).*",
            Pattern.DOTALL);
    private static final Pattern CORE =
            Pattern.compile(".*\\b(core|middle|centre|center|inside|heap|pile|compost|probe)\\b.*", Pattern.DOTALL);
    private static final Pattern OUTDOOR =
            Pattern.compile(".*\\b(outdoors?|outside|ambient|air|weather|shade)\\b.*", Pattern.DOTALL);
    private static final Pattern WARMTH = Pattern.compile(
            ".*(temp|\u00b0|celsius|fahrenheit|\\bdeg\\b|\\((c|f)\\)|\\[(c|f)\\]|sensor|channel|\\bch ?[0-9]).*",
            Pattern.DOTALL);
    private static final Pattern IN_F = Pattern.compile(
            ".*(\u00b0 ?f|fahrenheit|\\(f\\)|\\[f\\]|deg ?f|[ _]f)\\b.*|.*\\((\u00b0)?f\\).*", Pattern.DOTALL);
    private static final Pattern IN_C = Pattern.compile(
            ".*(\u00b0 ?c|celsius|\\(c\\)|\\[c\\]|deg ?c|[ _]c)\\b.*|.*\\((\u00b0)?c\\).*", Pattern.DOTALL);
    private static final Pattern UNIVERSAL =
            Pattern.compile(".*\\b(utc|gmt)\\b *([+\u2212-] *[0-9])?.*", Pattern.DOTALL);

    /** Whether a name in lower case is that of a day or time. */
    static boolean isTime(String name) {
        return TIME.matcher(name.replace('_', ' ')).matches();
    }

    /**
     * The columns of a header, in lower case.
     *
     * @throws LoggerFault where no temperature is named, or several and none of them as core or outside
     */
    static Columns of(List<String> header) {
        int stamp = -1;
        int clock = -1;
        List<Integer> core = new ArrayList<>();
        List<Integer> outdoor = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < header.size(); i++) {
            String name = header.get(i).replace('_', ' ');
            if (isTime(name)) {
                if (stamp < 0) {
                    stamp = i;
                } else if (clock < 0
                        && !name.contains("date")
                        && !header.get(stamp).contains("time")) {
                    clock = i;
                }
            } else if (!OTHER.matcher(name).matches()) {
                boolean inner = CORE.matcher(name).matches();
                boolean outer = OUTDOOR.matcher(name).matches();
                if (inner != outer) {
                    (inner ? core : outdoor).add(i);
                } else if (inner || WARMTH.matcher(name).matches()) {
                    open.add(i);
                }
            }
        }
        if (core.isEmpty() && open.size() == 1) {
            core.addAll(open);
        }
        if (core.isEmpty() && (outdoor.isEmpty() || !open.isEmpty())) {
            throw new LoggerFault("it is not clear which column is the temperature of the core; found "
                    + String.join(", ", header) + ". Allowed: one with core, heap, pile, compost or probe in its name,"
                    + " and outside, outdoor, ambient or air for the weather. Change the names in the first row."
                    + " Example: Time;Core °C;Outside °C");
        }
        Matcher universal = UNIVERSAL.matcher(header.get(stamp));
        return new Columns(
                stamp,
                clock,
                List.copyOf(core),
                List.copyOf(outdoor),
                header.stream().map(Columns::fahrenheit).toList(),
                universal.matches() && universal.group(2) == null);
    }

    private static Optional<Boolean> fahrenheit(String name) {
        return IN_F.matcher(name).matches()
                ? Optional.of(true)
                : IN_C.matcher(name).matches() ? Optional.of(false) : Optional.empty();
    }
}
