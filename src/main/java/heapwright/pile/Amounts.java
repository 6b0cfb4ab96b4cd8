package heapwright.pile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads how much of something there is: a number and a unit of mass, of volume, or a household measure. */
final class Amounts {

    static final UnitWords UNITS = UnitWords.of(MassUnit.values(), VolumeUnit.values());

    /** The span outside which an amount must be a slip: a milligram or millionth of a litre, 100 t, 1000 m³. */
    private static final double LEAST = 1e-6;

    private static final double MOST_KILOGRAMS = 1e5;
    private static final double MOST_LITRES = 1e6;

    private static final String ALLOWED = "a number above 0, up to 100 t or 1000 m3";
    private static final String UNIT_ALLOWED =
            "a unit of mass or volume (" + UNITS.listed() + ") or a household measure, such as bucket";
    private static final String EXAMPLE = "8";
    private static final String UNIT_EXAMPLE = "\"bucket\"";

    private final Lexicon lexicon;
    private final Map<String, Double> ownMeasures;

    /**
     * @param lexicon the words known
     * @param ownMeasures litres of the measures that the document redefines
     */
    Amounts(Lexicon lexicon, Map<String, Double> ownMeasures) {
        this.lexicon = lexicon;
        this.ownMeasures = Map.copyOf(ownMeasures);
    }

    /** The amount in the fields {@code amount} and {@code unit}, both needed. */
    Optional<Amount> needed(Section section) {
        Optional<Node> number = section.needed("amount", ALLOWED, EXAMPLE);
        Optional<Node> unit = section.needed("unit", UNIT_ALLOWED, UNIT_EXAMPLE);
        OptionalDouble value =
                number.map(node -> section.number(node, ALLOWED, EXAMPLE)).orElse(OptionalDouble.empty());
        if (value.isPresent() && value.getAsDouble() <= 0) {
            section.findings().wrong(number.get(), ALLOWED, EXAMPLE);
            value = OptionalDouble.empty();
        }
        Optional<String> word = unit.flatMap(node -> section.string(node, UNIT_ALLOWED, UNIT_EXAMPLE));
        double given = value.orElse(1);
        Optional<Amount> amount = word.flatMap(each -> amount(given, each));
        if (word.isPresent() && amount.isEmpty()) {
            String unknown = word.get();
            section.findings()
                    .wrong(unit.get(), unit.get().shown(), UNIT_ALLOWED, UNIT_EXAMPLE, () -> nearest(unknown));
        }
        if (value.isEmpty() || amount.isEmpty()) {
            return Optional.empty();
        }
        if (!possible(amount.get())) {
            String found = number.get().shown() + " " + amount.get().unit();
            section.findings().wrong(number.get(), found, ALLOWED, EXAMPLE);
        }
        return amount;
    }

    /** An amount that may be left out altogether, but not by half. */
    Optional<Amount> optional(Section section) {
        boolean none =
                section.field("amount").isEmpty() && section.field("unit").isEmpty();
        return none ? Optional.empty() : needed(section);
    }

    private Optional<Amount> amount(double value, String word) {
        Optional<Unit> unit = UNITS.find(word);
        if (unit.isPresent()) {
            return unit.map(each -> each instanceof MassUnit
                    ? Amount.ofMass(value, each.symbol(), Rounding.converted(value, each, MassUnit.KILOGRAM))
                    : Amount.ofVolume(value, each.symbol(), Rounding.converted(value, each, VolumeUnit.LITRE)));
        }
        return lexicon.measure(word).map(id -> {
            double litres = ownMeasures.getOrDefault(id, lexicon.litres(id));
            OptionalDouble pressed = lexicon.pressedKilograms(id);
            return pressed.isPresent()
                    ? Amount.ofMass(
                            value, id, Rounding.measured(value, pressed.getAsDouble() * litres / lexicon.litres(id)))
                    : Amount.ofVolume(value, id, Rounding.measured(value, litres));
        });
    }

    private Optional<String> nearest(String word) {
        List<String> candidates = new ArrayList<>(lexicon.measureWords());
        UNITS.units().forEach(unit -> candidates.addAll(unit.spellings()));
        return Closest.to(word, candidates)
                .map(near -> UNITS.find(near)
                        .map(Unit::symbol)
                        .or(() -> lexicon.measure(near))
                        .orElse(near));
    }

    private static boolean possible(Amount amount) {
        return amount.isMass()
                ? amount.kilograms() >= LEAST && amount.kilograms() <= MOST_KILOGRAMS
                : amount.litres() >= LEAST && amount.litres() <= MOST_LITRES;
    }
}
