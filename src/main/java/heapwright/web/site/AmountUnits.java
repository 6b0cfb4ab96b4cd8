package heapwright.web.site;

import heapwright.report.Units;
import heapwright.report.Words;
import heapwright.web.view.CheckupView.Choice;
import java.util.ArrayList;
import java.util.List;

/** The units in which amounts are typed: measures of the house first, then litres and kilograms or their like. */
final class AmountUnits {

    private static final List<String> HOUSE =
            List.of("bucket", "wheelbarrow", "sack", "spadeful", "forkful", "armful", "handful", "cup", "tablespoon");
    private static final List<String> HOUSE_US = List.of(
            "five-gallon-bucket",
            "wheelbarrow",
            "paper-yard-bag",
            "spadeful",
            "forkful",
            "armful",
            "handful",
            "us-cup",
            "us-tablespoon");
    private static final List<String> PLAIN = List.of("L", "kg", "g");
    private static final List<String> PLAIN_US = List.of("gal", "ft3", "lb", "oz");

    private final Words words;
    private final Texts texts;

    AmountUnits(Words words, Texts texts) {
        this.words = words;
        this.texts = texts;
    }

    /** The choices, with the one that was chosen; one that is not listed is added. */
    List<Choice> choices(String chosen) {
        boolean us = words.figures().units() == Units.US;
        List<Choice> choices = new ArrayList<>();
        for (String id : us ? HOUSE_US : HOUSE) {
            choices.add(
                    new Choice(id, words.knowledge().measures().get(id).name().many(), id.equals(chosen)));
        }
        for (String unit : us ? PLAIN_US : PLAIN) {
            choices.add(new Choice(unit, texts.of("unit." + unit), unit.equals(chosen)));
        }
        if (!chosen.isEmpty() && choices.stream().noneMatch(Choice::chosen)) {
            choices.add(new Choice(chosen, chosen, true));
        }
        return choices;
    }
}
