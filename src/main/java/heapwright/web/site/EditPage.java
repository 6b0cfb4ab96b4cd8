package heapwright.web.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.journal.Stored;
import heapwright.pile.Aim;
import heapwright.pile.Container;
import heapwright.pile.Gear;
import heapwright.pile.Pile;
import heapwright.pile.PileWriter;
import heapwright.pile.Place;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import heapwright.pile.Setting;
import heapwright.pile.Token;
import heapwright.report.JsonText;
import heapwright.web.guard.Refusal;
import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.EditView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a pile is, told or put right after it was made: its age, bin, size, place, recipe, what it is for and who looks after it. */
final class EditPage {

    private static final Pattern FIELD = Pattern.compile("/(?:container/|place/|aim/|keeper/)?([A-Za-z]+).*");
    private static final String EDIT = "/piles/{id}/edit";

    private final Site site;
    private final Renderer renderer;
    private final Texts texts;
    private final Saver saver;
    private final Piles piles;

    EditPage(Site site, Renderer renderer, Saver saver) {
        this.site = site;
        this.renderer = renderer;
        this.texts = renderer.texts();
        this.saver = saver;
        this.piles = new Piles(site, renderer.texts());
    }

    void register(RoutesConfig routes) {
        routes.get(EDIT, ctx -> {
            Stored stored = piles.stored(ctx);
            show(
                    ctx,
                    stored,
                    EditForm.of(
                            stored.pile(), site.today(), DisplaySettings.of(ctx).us()),
                    List.of());
        });
        routes.post(EDIT, this::typed);
    }

    private void show(Context ctx, Stored stored, EditForm form, List<Fault> faults) {
        RecipeForm rows = new RecipeForm(form.recipe(), List.of(), Map.of(), form.rows());
        EditView view = new EditView(
                stored.pile().name(),
                Piles.address(stored.id()),
                form.typed(),
                form.carried(),
                new RecipeRows(renderer.words(ctx), texts).view(RecipeForm.PREFIX, rows.shown()),
                form.rows(),
                Map.of(
                        "kind",
                        choices("kind", Container.Kind.values(), form),
                        "cover",
                        choices("cover", Container.Cover.values(), form),
                        "base",
                        choices("base", Container.Base.values(), form),
                        "insulation",
                        choices("insulation", Container.Insulation.values(), form),
                        "climate",
                        choices("build.climate", "climate", Place.Climate.values(), form),
                        "use",
                        choices("use", Aim.Use.values(), form),
                        EditForm.SETTINGS,
                        choices(EditForm.SETTINGS, Setting.values(), form),
                        EditForm.LACKS,
                        tools(form)),
                DisplaySettings.of(ctx).us() ? "in" : "cm",
                DisplaySettings.of(ctx).us() ? texts.of("unit.ft3") : texts.of("unit.m3"),
                MaterialChoices.of(site.knowledge()),
                faults);
        renderer.page(ctx, texts.of("edit.title", view.name()), Page.Door.PILES, "edit", view);
    }

    private List<Choice> choices(String field, Token[] all, EditForm form) {
        return choices(field, field, all, form);
    }

    private List<Choice> choices(String prefix, String field, Token[] all, EditForm form) {
        List<String> chosen = List.of(form.value(field).split(" "));
        return Arrays.stream(all)
                .map(Token::token)
                .filter(t -> !t.equals("unknown"))
                .map(t -> new Choice(t, texts.of(prefix + "." + t), chosen.contains(t)))
                .toList();
    }

    private List<Choice> tools(EditForm form) {
        List<String> chosen = List.of(form.value(EditForm.LACKS).split(" "));
        return Arrays.stream(Gear.values())
                .map(Token::token)
                .sorted()
                .map(t -> new Choice(t, texts.shared("gear." + t), chosen.contains(t)))
                .toList();
    }

    private void typed(Context ctx) throws IOException {
        if (ctx.formParam("more") != null) {
            show(ctx, piles.stored(ctx), EditForm.of(ctx, site.knowledge()), List.of());
            return;
        }
        if (!saver.isNew(ctx)) {
            return;
        }
        Stored stored = piles.stored(ctx);
        EditForm form = EditForm.of(ctx, site.knowledge());
        boolean us = DisplaySettings.of(ctx).us();
        List<String> overtaken = form.overtaken(EditForm.shown(stored.pile(), site.today(), us));
        EditForm now = form.on(stored.pile(), site.today(), us);
        if (!overtaken.isEmpty()) {
            ctx.status(HttpStatus.CONFLICT);
            show(
                    ctx,
                    stored,
                    now,
                    overtaken.stream().map(f -> overtaken(f, stored.pile(), us)).toList());
            return;
        }
        List<Fault> faults = new ArrayList<>();
        Optional<Pile> told = read(ctx, now, stored.pile(), us, faults);
        if (told.isEmpty() || !faults.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, stored, now, faults);
            return;
        }
        saver.change(
                ctx,
                stored.id(),
                pile -> {
                    if (!pile.equals(stored.pile())) {
                        throw new Refusal(409, "changed");
                    }
                    return told.get();
                },
                "told",
                more -> show(ctx, stored, now, more));
    }

    private Fault overtaken(String field, Pile now, boolean us) {
        String there = field.equals(EditForm.RECIPE)
                ? ""
                : EditForm.shown(now, site.today(), us).get(field);
        return new Fault(
                field.equals(EditForm.RECIPE) ? "r0.material" : field,
                there.isEmpty()
                        ? texts.of("edit.overtaken", texts.of("edit." + field))
                        : texts.of("edit.overtaken.by", texts.of("edit." + field), there));
    }

    private Optional<Pile> read(Context ctx, EditForm form, Pile pile, boolean us, List<Fault> faults) {
        ObjectNode document = new PileWriter().tree(pile);
        LocalDate today = site.today();
        document.put("asOf", (today.isAfter(pile.asOf()) ? today : pile.asOf()).toString());
        if (form.changed(EditForm.BUILT)) {
            built(document, form.value(EditForm.BUILT), pile, faults);
        }
        write(document, form, us);
        if (form.changed(EditForm.RECIPE)) {
            form.recipe(document, pile);
        }
        if (form.value(EditForm.NAME).isEmpty()) {
            faults.add(new Fault(EditForm.NAME, texts.of("fault.name")));
        }
        ReadResult read =
                site.reader().read(pile.name(), JsonText.write(document).getBytes(StandardCharsets.UTF_8));
        for (Problem problem : read.problems()) {
            Fault fault = fault(ctx, problem, form);
            if (faults.stream().noneMatch(f -> f.field().equals(fault.field()))) {
                faults.add(fault);
            }
        }
        return read.pile();
    }

    /** The day it was built, with the materials that went in on that day. */
    private void built(ObjectNode document, String typed, Pile pile, List<Fault> faults) {
        document.remove(List.of("built", "builtAbout"));
        document.path("recipe").forEach(node -> {
            if (node.path("date").asText().equals(pile.built().toString())) {
                ((ObjectNode) node).remove("date");
            }
        });
        if (typed.isEmpty()) {
            return;
        }
        BuiltWhen.of(typed, site.today())
                .ifPresentOrElse(
                        when -> when.into(document),
                        () -> faults.add(new Fault(EditForm.BUILT, texts.of("fault.when", typed))));
    }

    private static void write(ObjectNode document, EditForm form, boolean us) {
        if (form.changed(EditForm.NAME)) {
            document.put("name", form.value(EditForm.NAME));
        }
        for (String field : EditForm.LENGTHS) {
            quantity(document, form, field, EditForm.unit(field, us));
        }
        quantity(document, form, EditForm.VOLUME, EditForm.unit(EditForm.VOLUME, us));
        EditForm.CHOSEN.forEach((field, owner) -> text(document.withObject("/" + owner), form, field));
        text(document.withObject("/aim"), form, EditForm.READY_BY);
        if (form.changed(EditForm.LATITUDE)) {
            ObjectNode place = document.withObject("/place");
            place.remove(EditForm.LATITUDE);
            if (!form.value(EditForm.LATITUDE).isEmpty()) {
                RecipeForm.number(place, EditForm.LATITUDE, form.value(EditForm.LATITUDE));
            }
        }
        words(document.withObject("/place"), form, EditForm.SETTINGS);
        words(document.withObject("/keeper"), form, EditForm.LACKS);
        if (form.changed(EditForm.MINUTES)) {
            ObjectNode keeper = document.withObject("/keeper");
            keeper.remove(EditForm.MINUTES);
            if (!form.value(EditForm.MINUTES).isEmpty()) {
                RecipeForm.number(keeper, EditForm.MINUTES, form.value(EditForm.MINUTES));
            }
        }
        if (form.changed(EditForm.RODENT_PROOF)) {
            document.withObject("/container")
                    .put(
                            EditForm.RODENT_PROOF,
                            form.value(EditForm.RODENT_PROOF).equals(CheckupAnswers.YES));
        }
    }

    private static void words(ObjectNode owner, EditForm form, String field) {
        if (form.changed(field)) {
            ArrayNode list = owner.putArray(field);
            Arrays.stream(form.value(field).split(" "))
                    .filter(s -> !s.isEmpty())
                    .forEach(list::add);
        }
    }

    private static void text(ObjectNode owner, EditForm form, String field) {
        if (form.changed(field)) {
            owner.remove(field);
            if (!form.value(field).isEmpty()) {
                owner.put(field, form.value(field));
            }
        }
    }

    private static void quantity(ObjectNode document, EditForm form, String field, String unit) {
        if (form.changed(field)) {
            ObjectNode box = document.withObject("/container");
            box.remove(field);
            if (!form.value(field).isEmpty()) {
                RecipeForm.number(box.putObject(field), "value", form.value(field));
                box.withObject("/" + field).put("unit", unit);
            }
        }
    }

    private Fault fault(Context ctx, Problem problem, EditForm form) {
        Optional<Fault> row = new RecipeRows(renderer.words(ctx), texts).fault(problem, form.recipe(), List.of());
        if (row.isPresent()) {
            return row.get();
        }
        if (problem.pointer().startsWith("/log") || problem.pointer().startsWith("/advised")) {
            return new Fault(EditForm.BUILT, texts.of("edit.fault.notes"));
        }
        Matcher field = FIELD.matcher(problem.pointer());
        FaultWords told = new FaultWords(texts);
        String name = field.matches() ? field.group(1) : "";
        if (!form.typed().containsKey(name)) {
            return told.other(problem);
        }
        String unit = EditForm.unit(name, DisplaySettings.of(ctx).us());
        return new Fault(name, told.text(texts.of("edit." + name), name, form.value(name), unit, problem));
    }
}
