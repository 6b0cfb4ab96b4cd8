package heapwright.pile;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads lists of materials: what went in, and what is at hand. */
final class Inputs {

    private static final String ALLOWED = "the id or a name of a material, such as leaves-mixed";
    private static final String EXAMPLE = "\"leaves-mixed\"";

    private final Lexicon lexicon;
    private final Set<String> own;
    private final Amounts amounts;
    private final Timeline timeline;
    private final List<Note> notes;

    /**
     * @param lexicon the words known
     * @param own ids of the materials that the document itself describes
     * @param amounts reads amounts
     * @param timeline the days that are possible
     * @param notes takes what was taken for granted
     */
    Inputs(Lexicon lexicon, Set<String> own, Amounts amounts, Timeline timeline, List<Note> notes) {
        this.lexicon = lexicon;
        this.own = Set.copyOf(own);
        this.amounts = amounts;
        this.timeline = timeline;
        this.notes = notes;
    }

    /** The same for other days. */
    Inputs at(Timeline other) {
        return new Inputs(lexicon, own, amounts, other, notes);
    }

    /** Ingredients; one without a date went in on the given day. */
    List<Ingredient> ingredients(Section owner, String field, int most, LocalDate day) {
        List<Ingredient> ingredients = new ArrayList<>();
        for (Section section : owner.sections(field, Shape.INGREDIENT, most)) {
            Optional<String> material = material(section);
            Optional<Amount> amount = amounts.needed(section);
            OptionalDouble piece = section.quantity("piece", Quantity.PIECE_LENGTH);
            boolean chopped = section.flag("chopped");
            LocalDate date = timeline.past(section, "date").orElse(day);
            if (material.isPresent() && amount.isPresent()) {
                ingredients.add(new Ingredient(material.get(), amount.get(), piece, chopped, date));
            }
        }
        return ingredients;
    }

    List<Stock> stocks(Section owner, String field) {
        List<Stock> stocks = new ArrayList<>();
        for (Section section : owner.sections(field, Shape.STOCK, Lists.STOCK)) {
            Optional<String> material = material(section);
            Optional<Amount> amount = amounts.optional(section);
            material.ifPresent(id -> stocks.add(new Stock(id, amount)));
        }
        return stocks;
    }

    private Optional<String> material(Section section) {
        return section.needed("material", ALLOWED, EXAMPLE)
                .flatMap(node -> section.string(node, ALLOWED, EXAMPLE).flatMap(word -> material(section, node, word)));
    }

    private Optional<String> material(Section section, Node node, String word) {
        if (own.contains(word)) {
            return Optional.of(word);
        }
        Optional<String> named = lexicon.materials().named(word);
        if (named.isEmpty()) {
            section.findings()
                    .wrong(
                            node,
                            node.shown(),
                            allowed(lexicon.materials(), word, ALLOWED),
                            EXAMPLE,
                            () -> closest(lexicon.materials(), word, own));
        } else if (!named.get().equals(word)) {
            notes.add(new Note(node.at().pointer(), Shown.quoted(word) + " is taken as " + named.get() + "."));
        }
        return named;
    }

    /** What is allowed in place of a word: where it may mean several materials, these. */
    static String allowed(MaterialNames names, String word, String otherwise) {
        List<String> candidates = names.candidates(word);
        return candidates.size() < 2
                ? otherwise
                : "a word for one material; this may mean "
                        + String.join(", ", candidates.subList(0, candidates.size() - 1)) + " or "
                        + candidates.get(candidates.size() - 1);
    }

    /** The one material that was most likely meant; none where it may be several. */
    static Optional<String> closest(MaterialNames names, String word, Collection<String> own) {
        List<String> candidates = names.candidates(word);
        return candidates.size() > 1
                ? Optional.empty()
                : candidates.stream().findFirst().or(() -> names.near(word, own));
    }
}
