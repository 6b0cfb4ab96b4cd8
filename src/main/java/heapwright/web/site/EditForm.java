package heapwright.web.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Amount;
import heapwright.pile.Container;
import heapwright.pile.Ingredient;
import heapwright.pile.Keeper;
import heapwright.pile.Pile;
import heapwright.pile.Place;
import heapwright.pile.Token;
import io.javalin.http.Context;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a person tells of a pile itself, by field, as the form shows it: how it was when the page was opened, and how it is
 * now typed. Only what differs is written, so that a figure that nobody touched keeps all its digits.
 *
 * @param typed the fields as typed
 * @param was the fields as the page was opened
 * @param recipe the rows of the recipe as typed
 * @param rows how many rows are shown
 */
record EditForm(Map<String, String> typed, Map<String, String> was, List<RecipeForm.Row> recipe, int rows) {

    static final String NAME = "name";
    static final String BUILT = "built";
    static final String VOLUME = "volume";
    static final String LATITUDE = "latitude";
    static final String SETTINGS = "settings";
    static final String RODENT_PROOF = "rodentProof";
    static final String READY_BY = "readyBy";
    static final String MINUTES = "minutes";
    static final String LACKS = "lacks";
    static final String RECIPE = "recipe";

    /** The field that carries how the page was opened. */
    static final String WAS = "was";

    static final List<String> LENGTHS = List.of("length", "width", "height");

    /** Fields that are chosen from words of the document, with the object of the document they stand in. */
    static final Map<String, String> CHOSEN = Map.of(
            "kind", "container",
            "cover", "container",
            "base", "container",
            "insulation", "container",
            "climate", "place",
            "use", "aim");

    private static final List<String> TEXTS = List.of(NAME, BUILT, VOLUME, LATITUDE, RODENT_PROOF, READY_BY, MINUTES);
    private static final double LITRES_A_FT3 = 28.316846592;
    private static final double CM_AN_INCH = 2.54;

    /** The form as it is opened. */
    static EditForm of(Pile pile, LocalDate today, boolean us) {
        Map<String, String> shown = shown(pile, today, us);
        List<RecipeForm.Row> recipe = rows(pile);
        return new EditForm(shown, shown, recipe, recipe.size() + 2);
    }

    /** The form as it was sent. */
    static EditForm of(Context ctx, Knowledge knowledge) {
        Map<String, String> typed = new LinkedHashMap<>();
        TEXTS.forEach(field -> put(typed, field, ctx.formParam(field)));
        LENGTHS.forEach(field -> put(typed, field, ctx.formParam(field)));
        CHOSEN.keySet().forEach(field -> put(typed, field, ctx.formParam(field)));
        put(typed, SETTINGS, String.join(" ", ctx.formParams(SETTINGS)));
        put(typed, LACKS, String.join(" ", ctx.formParams(LACKS)));
        RecipeForm recipe = RecipeForm.ofForm(ctx::formParam);
        List<RecipeForm.Row> rows = recipe.recipe().stream()
                .map(r ->
                        new RecipeForm.Row(MaterialChoices.id(knowledge, r.material()), r.amount(), r.unit(), r.cut()))
                .toList();
        put(typed, RECIPE, packed(rows));
        return new EditForm(typed, query(ctx.formParam(WAS)), rows, recipe.rows());
    }

    /** Whether the person changed a field. */
    boolean changed(String field) {
        return !value(field).equals(was.getOrDefault(field, ""));
    }

    String value(String field) {
        return typed.getOrDefault(field, "");
    }

    /** The fields that another window changed since this page was opened, to something else than what is typed here. */
    List<String> overtaken(Map<String, String> now) {
        return typed.keySet().stream()
                .filter(this::changed)
                .filter(f -> !now.getOrDefault(f, "").equals(was.getOrDefault(f, "")))
                .filter(f -> !now.getOrDefault(f, "").equals(value(f)))
                .toList();
    }

    /** The same, taken as if it had been opened on the pile as it is now: what nobody touched here shows what is now. */
    EditForm on(Pile pile, LocalDate today, boolean us) {
        Map<String, String> now = shown(pile, today, us);
        Map<String, String> merged = new LinkedHashMap<>(now);
        typed.keySet().stream().filter(this::changed).forEach(f -> merged.put(f, value(f)));
        return changed(RECIPE)
                ? new EditForm(merged, now, recipe, rows)
                : new EditForm(
                        merged, now, rows(pile), Math.max(rows, pile.recipe().size() + 2));
    }

    /** How the page was opened, for a hidden field. */
    String carried() {
        return was.entrySet().stream()
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    /** The fields of a pile as they are shown. */
    static Map<String, String> shown(Pile pile, LocalDate today, boolean us) {
        Map<String, String> shown = new LinkedHashMap<>();
        Container box = pile.container();
        Place place = pile.place();
        put(shown, NAME, pile.name());
        put(shown, BUILT, pile.builtAssumed() ? "" : when(pile, today));
        put(shown, "length", length(box.lengthM(), us));
        put(shown, "width", length(box.widthM(), us));
        put(shown, "height", length(box.heightM(), us));
        put(
                shown,
                VOLUME,
                box.volumeM3().isEmpty()
                        ? ""
                        : NoteFields.plain(
                                us
                                        ? box.volumeM3().getAsDouble() * 1000 / LITRES_A_FT3
                                        : box.volumeM3().getAsDouble()));
        put(shown, "kind", token(box.kind()));
        put(shown, "cover", token(box.cover()));
        put(shown, "base", token(box.base()));
        put(shown, "insulation", token(box.insulation()));
        put(shown, RODENT_PROOF, box.rodentProof() ? CheckupAnswers.YES : "");
        put(
                shown,
                LATITUDE,
                place.latitude().isEmpty()
                        ? ""
                        : NoteFields.plain(place.latitude().getAsDouble()));
        put(shown, "climate", token(place.climate()));
        put(
                shown,
                SETTINGS,
                String.join(" ", place.settings().stream().map(Token::token).toList()));
        put(shown, "use", token(pile.aim().use()));
        put(shown, READY_BY, pile.aim().readyBy().map(Object::toString).orElse(""));
        Keeper keeper = pile.keeper();
        put(
                shown,
                MINUTES,
                keeper.minutes().isEmpty()
                        ? ""
                        : String.valueOf(keeper.minutes().getAsInt()));
        put(
                shown,
                LACKS,
                String.join(
                        " ", keeper.lacks().stream().map(Token::token).sorted().toList()));
        put(shown, RECIPE, packed(rows(pile)));
        return shown;
    }

    private static void put(Map<String, String> map, String field, String value) {
        map.put(field, value == null ? "" : value.strip());
    }

    /** A day that was told roughly is shown as roughly as it was told, in words that read back. */
    private static String when(Pile pile, LocalDate today) {
        long weeks = Math.round(ChronoUnit.DAYS.between(pile.built(), today) / 7.0);
        return pile.builtAbout() ? weeks + " weeks" : pile.built().toString();
    }

    private static String token(Token token) {
        return token.token().equals("unknown") ? "" : token.token();
    }

    private static String length(OptionalDouble metres, boolean us) {
        return metres.isEmpty()
                ? ""
                : NoteFields.plain(Math.round(metres.getAsDouble() * 1000 / (us ? CM_AN_INCH : 1)) / 10.0);
    }

    private static List<RecipeForm.Row> rows(Pile pile) {
        return pile.recipe().stream().map(EditForm::row).toList();
    }

    private static RecipeForm.Row row(Ingredient one) {
        Amount amount = one.amount();
        return new RecipeForm.Row(
                one.material(),
                NoteFields.plain(amount.value()),
                amount.unit(),
                one.pieceCm().isEmpty() ? "" : NoteFields.plain(one.pieceCm().getAsDouble()));
    }

    /** Puts the rows of the recipe into the document. A material that was in it keeps its day, and what else was told. */
    void recipe(ObjectNode document, Pile now) {
        List<ObjectNode> before = new ArrayList<>();
        document.path(RECIPE).forEach(node -> before.add((ObjectNode) node));
        List<RecipeForm.Row> shown = new ArrayList<>(rows(now));
        ArrayNode list = document.putArray(RECIPE);
        for (RecipeForm.Row row : recipe) {
            int same = IntStream.range(0, shown.size())
                    .filter(i -> shown.get(i).material().equals(row.material()))
                    .findFirst()
                    .orElse(-1);
            RecipeForm.Row old = same < 0 ? new RecipeForm.Row("", "", "", "") : shown.remove(same);
            ObjectNode node = same < 0 ? JsonNodeFactory.instance.objectNode() : before.remove(same);
            list.add(node);
            if (!old.amount().equals(row.amount()) || !old.unit().equals(row.unit())) {
                RecipeForm.put(node, row);
            }
            if (!old.cut().equals(row.cut())) {
                RecipeForm.cut(node, row);
            }
        }
    }

    private static String packed(List<RecipeForm.Row> rows) {
        return rows.stream()
                .map(r -> String.join("~", r.material(), r.amount(), r.unit(), r.cut()))
                .collect(Collectors.joining("|"));
    }

    private static Map<String, String> query(String query) {
        Map<String, String> fields = new LinkedHashMap<>();
        Arrays.stream((query == null ? "" : query).split("&"))
                .map(p -> p.split("=", 2))
                .filter(p -> p.length == 2)
                .forEach(p -> fields.put(p[0], decoded(p[1])));
        return fields;
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            return "";
        }
    }

    /** The unit in which a field is typed, as a document writes it; empty where it has none. */
    static String unit(String field, boolean us) {
        if (LENGTHS.contains(field)) {
            return us ? "in" : "cm";
        }
        return field.equals(VOLUME) ? us ? "ft3" : "m3" : "";
    }
}
