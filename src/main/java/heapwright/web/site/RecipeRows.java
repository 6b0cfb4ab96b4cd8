package heapwright.web.site;

import heapwright.pile.Problem;
import heapwright.report.Words;
import heapwright.web.view.BuildView.RowView;
import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.CheckupView.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rows of a recipe in words, and what is wrong with them at the row where it belongs. */
final class RecipeRows {

    private static final List<String> CUTS = List.of("3", "10", "20", "40");
    private static final Pattern PLACE = Pattern.compile("/(recipe|atHand)/([0-9]+)(/([a-z]+))?.*");

    private static final String MATERIAL = "material";
    private static final String AMOUNT = "amount";
    private static final String UNIT = "unit";
    private static final String CUT = "cut";
    private static final Map<String, String> LABELS =
            Map.of(MATERIAL, "note.material", AMOUNT, "note.amount", UNIT, "note.unit", CUT, "cut");

    private final Words words;
    private final Texts texts;

    RecipeRows(Words words, Texts texts) {
        this.words = words;
        this.texts = texts;
    }

    List<RowView> view(String prefix, List<RecipeForm.Row> rows) {
        AmountUnits units = new AmountUnits(words, texts);
        List<RowView> views = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            RecipeForm.Row row = rows.get(i);
            views.add(new RowView(
                    prefix + i,
                    i + 1,
                    MaterialChoices.shown(words.knowledge(), row.material()),
                    row.amount(),
                    units.choices(row.unit()),
                    cuts(row.cut())));
        }
        return views;
    }

    /** The lengths to choose from; one that a document told and that is not among them is added. */
    private List<Choice> cuts(String chosen) {
        List<Choice> cuts = new ArrayList<>();
        CUTS.forEach(c -> cuts.add(new Choice(c, texts.of("cut." + c), c.equals(chosen))));
        if (!chosen.isEmpty() && !CUTS.contains(chosen)) {
            cuts.add(new Choice(chosen, texts.of("cut.other", chosen), true));
        }
        return cuts;
    }

    /** What is wrong with a row, if the problem is of one. */
    Optional<Fault> fault(Problem problem, List<RecipeForm.Row> recipe, List<RecipeForm.Row> atHand) {
        Matcher place = PLACE.matcher(problem.pointer());
        if (!place.matches()) {
            return Optional.empty();
        }
        boolean inRecipe = place.group(1).equals("recipe");
        int row = Integer.parseInt(place.group(2));
        List<RecipeForm.Row> rows = inRecipe ? recipe : atHand;
        RecipeForm.Row typed = row < rows.size() ? rows.get(row) : new RecipeForm.Row("", "", "", "");
        String field = field(Optional.ofNullable(place.group(4)).orElse(""), typed);
        String what = texts.of(inRecipe ? "build.row" : "build.hand", row + 1) + ", " + texts.of(LABELS.get(field));
        String told = field.equals(MATERIAL)
                ? new MaterialFault(words.knowledge(), texts).text(what, typed.material(), problem)
                : new FaultWords(texts).text(what, field, value(field, typed), "", problem);
        return Optional.of(new Fault((inRecipe ? RecipeForm.PREFIX : RecipeForm.AT_HAND) + row + "." + field, told));
    }

    /** The field of a row that a place in the document was typed into. */
    private static String field(String place, RecipeForm.Row typed) {
        if (place.equals(MATERIAL)) {
            return MATERIAL;
        }
        if (place.equals(UNIT) && !typed.amount().isBlank()) {
            return UNIT;
        }
        return place.equals("piece") ? CUT : AMOUNT;
    }

    private static String value(String field, RecipeForm.Row typed) {
        return field.equals(UNIT) ? typed.unit() : field.equals(CUT) ? typed.cut() : typed.amount();
    }
}
