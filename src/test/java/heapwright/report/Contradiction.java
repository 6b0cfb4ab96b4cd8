package heapwright.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Two things that cannot both be told of one pile, by whichever door.
 *
 * @param one what one answer says, a regular expression; the whole set of answers is looked through
 * @param other what another, or the same, then may not say
 * @param why they cannot both stand
 * @param invented a page that says both, to show that the pair can be found
 */
record Contradiction(String one, String other, String why, String invented) {

    private static final String STEP = "(?<= )\\d\\. ";
    private static final String SOON =
            "[^.]{0,120}?\\. (?:About [^:]{0,80}: [^:]{0,40}\\. )?When: in the next day or two";
    private static final String DIGS_DEEP =
            STEP + "(?:Bury food in the middle|Make the pile smaller|Turn the whole|Spread the ferment|Mix the pile)";

    /** The table: what one says, what the other may not say then, and why. */
    static final List<Contradiction> ALL = List.of(
            new Contradiction(
                    "coarse material[^.:]{0,20} (?:is|are) in order",
                    "coarse material: too little",
                    "one recipe has enough of it or has not",
                    "FITS: coarse material are in order. SLOW, coarse material: too little to hold it open, 0 %."),
            new Contradiction(
                    "(?<!Cold and slow: )\\b0(?: \\(up to \\d+\\))? days with the core above 40 °C; (?:[5-9]\\d|100) in 100",
                    "It will work, but slowly|It fits: build it",
                    "a pile that never warms and freezes works at best coldly, and that has to be said",
                    "0 (up to 3) days with the core above 40 °C; 88 in 100 that it freezes through."
                            + " It will work, but slowly; see what would help."),
            new Contradiction(
                    "leave the middle(?: closed)?(?= When| and keep)",
                    DIGS_DEEP,
                    "the middle is left alone or dug into",
                    "Do this 1. Loosen the sides and top, and leave the middle When: now."
                            + " 2. Bury food in the middle and cover it"),
            new Contradiction(
                    STEP + "Leave the frozen pile until it thaws",
                    STEP + "(?:Make air holes|Turn the whole|Mix the pile|Loosen the sides)",
                    "ice is left alone or worked",
                    "Do this 1. Make air holes down into the middle When: now. 2. Leave the frozen pile until it thaws"),
            new Contradiction(
                    STEP + "Leave it alone; it needs nothing now",
                    STEP + "(?:Turn the whole|Mix |Water |Bring water|Loosen|Make air holes|Spread the ferment)",
                    "it is left alone or worked",
                    "Do this 1. Leave it alone; it needs nothing now When: no hurry. 2. Mix in fresh green stuff"),
            new Contradiction(
                    STEP + "Wrap and cover the pile against the cold" + SOON,
                    STEP + "Spread the fermenting food through the pile" + SOON,
                    "sour food lies open for two days before it is wrapped",
                    "Do 1. Wrap and cover the pile against the cold. When: in the next day or two."
                            + " 2. Spread the fermenting food through the pile. When: in the next day or two."),
            new Contradiction(
                    "do not water it again",
                    STEP + "(?:Water the whole|Bring water)",
                    "what made it soggy is not done again",
                    "It is soggy since it was watered: do not water it again. 1. Water the whole pile"),
            new Contradiction(
                    "give no more of either",
                    STEP + "(?:Water in a little (?:urea|ammonium)|Dust )",
                    "what made it reek is not given again",
                    "It smells of ammonia: give no more of either. 1. Water in a little urea"),
            new Contradiction(
                    "give it nothing more until",
                    STEP + "(?:Mix in fresh|Mix in manure|Make the pile big enough)",
                    "what overheated it is not given again",
                    "It is too hot since it was fed: give it nothing more until. 1. Mix in fresh green stuff"),
            new Contradiction(
                    "Nothing to put right",
                    "What is wrong\\b|(?:Very likely|Likely): too (?:much|little)",
                    "nothing is wrong, or something is",
                    "Nothing to put right. Very likely: too much water."),
            new Contradiction(
                    "Ready for beds",
                    "(?<!By the model )\\b[Rr]eady about \\d|Not likely to be ready|\\bIt stalled on",
                    "what is ready today is not ready later, and has not stalled",
                    "Ready for beds; not yet for pots. Ready about 2 Sep 2026 (between 2 Sep and 9 Oct)."),
            new Contradiction(
                    "is it ready\\? [^.?]* Not ready yet",
                    "It has finished|" + STEP + "Use it",
                    "what is not ready has not finished and is not used",
                    "Heap: is it ready? 2 May 2027 Not ready yet. It has finished: its food is spent."),
            new Contradiction(
                    "It works\\.|a pile that works well: (?:very )?likely",
                    "\\bIt stalled on",
                    "it works or stands still",
                    "The answer It works. It stalled on 4 Sep 2026: since then the core has not reached 30 °C."),
            new Contradiction(
                    "sure enough to decide",
                    ": very likely \\(",
                    "nothing is surer than very likely",
                    "None of the findings below is sure enough to decide. too much nitrogen: very likely (97 in 100)"),
            new Contradiction(
                    "Nothing to add\\b",
                    "- Add \\d",
                    "there is something to add or not",
                    "Nothing to add. - Add 2 jugs."),
            new Contradiction(
                    "It fits: build it",
                    "- (?:WRONG|SLOW|KEEP OUT)\\b",
                    "what fits needs no mending",
                    "It fits: build it. - SLOW, size: small"));

    /** What of it a set of answers says, in their own words; empty where it does not say both. */
    Optional<String> in(List<String> answers) {
        return first(one, answers).flatMap(a -> first(other, answers).map(b -> "“" + a + "” and “" + b + "”: " + why));
    }

    private static Optional<String> first(String wanted, List<String> answers) {
        Pattern pattern = Pattern.compile(wanted);
        return answers.stream()
                .flatMap(text -> pattern.matcher(" " + text).results())
                .map(MatchResult::group)
                .findFirst();
    }

    /**
     * A quantity that a pile has one of.
     *
     * @param name what it is
     * @param told how it is told, with the figure as first group
     */
    record OneOf(String name, String told) {

        static final List<OneOf> ALL = List.of(
                new OneOf("weight of the pile", "pile about ([\\d.,]+ k?g)"),
                new OneOf("volume", "(?:- |; |from |from: |FITS: )volume ([\\d.,]+ (?:m³|L))"),
                new OneOf("moisture", "(?:- |; |from: )moisture (\\d+ %)"),
                new OneOf("C:N", "(?:- |; |from: )C:N (\\d+(?:\\.\\d+)?)"),
                new OneOf("day on which it was built", "Built (\\d+ \\w+ \\d{4})"),
                new OneOf("days since then", "days since it was built (\\d+)"),
                new OneOf("compost that it makes", "([\\d.,]+–[\\d.,]+ (?:L|m³)) of compost"),
                new OneOf("day on which it is ready", "[Rr]eady about (\\d+ \\w+ \\d{4})"),
                new OneOf("chance that it freezes", "(\\d+) in 100 that it freezes"),
                new OneOf("core temperature", "core temperature (-?\\d+ °C)"));

        /** The figures that a set of answers gives it, if there is more than one. */
        Optional<String> in(List<String> answers) {
            Set<String> figures = new LinkedHashSet<>();
            for (String text : answers) {
                Matcher matcher = Pattern.compile(told).matcher(text);
                while (matcher.find()) {
                    figures.add(matcher.group(1));
                }
            }
            return figures.size() > 1 ? Optional.of(name + ": " + figures) : Optional.empty();
        }
    }

    private static final Pattern PART = Pattern.compile("(?<![\\d.])(\\d+(?:\\.\\d+)?) %|(\\d+) in 100");
    private static final Pattern SPAN = Pattern.compile(
            "(-?\\d+(?:\\.\\d+)?)( [^\\d\\s(),;:.]+)? \\((-?\\d+(?:\\.\\d+)?)(?:–| to )(-?\\d+(?:\\.\\d+)?)(?: [^)]*)?\\)");

    /** Parts of more than the whole; a material whose own figures imply more carbon than there can be is told of as a fault. */
    static List<String> partsAboveTheWhole(String text) {
        return found(text, PART, m -> Double.parseDouble(m.group(1) == null ? m.group(2) : m.group(1)) > 100).stream()
                .filter(told -> !text.contains("imply " + told))
                .toList();
    }

    /** Figures told as likely that are an end of their span, or lie outside of it. */
    static List<String> endsOfTheirSpan(String text) {
        return found(text, SPAN, m -> {
            double likely = Double.parseDouble(m.group(1));
            return likely <= Double.parseDouble(m.group(3)) || likely >= Double.parseDouble(m.group(4));
        });
    }

    private static List<String> found(String text, Pattern pattern, Predicate<Matcher> wrong) {
        List<String> all = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            if (wrong.test(matcher)) {
                all.add(matcher.group());
            }
        }
        return all;
    }
}
