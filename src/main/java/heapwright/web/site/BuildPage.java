package heapwright.web.site;

import heapwright.advice.audit.Audit;
import heapwright.pile.Place;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import heapwright.report.AuditJson;
import heapwright.report.Words;
import heapwright.web.guard.Refusal;
import heapwright.web.view.AuditViews;
import heapwright.web.view.BuildView;
import heapwright.web.view.BuildView.RowView;
import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.OutlookView;
import heapwright.web.view.OutlookViews;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A recipe before it is built: its numbers, the verdict, the mend and the plan. It changes nothing on this machine. */
final class BuildPage {

    private static final String HERE = "/build";
    private static final List<String> CUTS = List.of("3", "10", "20", "40");
    private static final Pattern PLACE = Pattern.compile("/(recipe|atHand)/([0-9]+)(/([a-z]+))?.*");
    private static final Pattern SIZE =
            Pattern.compile("/(?:container|place)/(length|width|height|latitude|climate).*");

    private final Site site;
    private final Renderer renderer;
    private final Texts texts;

    BuildPage(Site site, Renderer renderer) {
        this.site = site;
        this.renderer = renderer;
        this.texts = renderer.texts();
    }

    void register(RoutesConfig routes) {
        routes.get(HERE, ctx -> show(ctx, address(ctx)));
        routes.post(HERE, this::typed);
        routes.post(HERE + "/live", this::live);
        routes.post(HERE + "/outlook", this::outlook);
        routes.get(HERE + "/audit.json", this::json);
    }

    private static RecipeForm address(Context ctx) {
        return RecipeForm.ofAddress(ctx::queryParams, ctx::queryParam);
    }

    private void typed(Context ctx) {
        RecipeForm form = RecipeForm.ofForm(ctx::formParam);
        if (!faults(read(ctx, form), form).isEmpty()) {
            show(ctx, form);
        } else {
            ctx.redirect(
                    HERE + "?" + form.query() + (ctx.formParam("more") == null ? "#numbers" : ""),
                    HttpStatus.SEE_OTHER);
        }
    }

    private void live(Context ctx) {
        RecipeForm form = RecipeForm.ofForm(ctx::formParam);
        ctx.header("X-Heapwright-Address", HERE + "?" + form.query());
        renderer.part(ctx, "numbers", view(ctx, form, Optional.empty()));
    }

    /** The winter ahead, which takes longer to reckon than the numbers and so follows them. */
    private void outlook(Context ctx) {
        renderer.part(ctx, "outlook", outlook(ctx, RecipeForm.ofForm(ctx::formParam)));
    }

    private Optional<OutlookView> outlook(Context ctx, RecipeForm form) {
        return form.empty()
                ? Optional.empty()
                : read(ctx, form)
                        .pile()
                        .filter(p -> site.advisor().alarm(p).isEmpty())
                        .flatMap(site.forecaster()::ahead)
                        .map(new OutlookViews(renderer.words(ctx))::view);
    }

    private void show(Context ctx, RecipeForm form) {
        BuildView view = view(ctx, form, outlook(ctx, form));
        if (!view.faults().isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        renderer.page(ctx, texts.of("build.title"), Page.Door.BUILD, "build", view);
    }

    private void json(Context ctx) {
        Audit audit = read(ctx, address(ctx))
                .pile()
                .flatMap(p -> site.advisor().audit(p, OptionalDouble.empty()))
                .map(site.forecaster()::ready)
                .orElseThrow(() -> new Refusal(422, "request"));
        ctx.header("Content-Disposition", "attachment; filename=\"audit.json\"");
        ctx.contentType("application/json").result(new AuditJson(renderer.words(ctx), site.version()).write(audit));
    }

    private ReadResult read(Context ctx, RecipeForm form) {
        boolean us = Look.of(ctx).us();
        return site.reader().read(texts.of("build.pile"), form.document(texts.of("build.pile"), site.today(), us));
    }

    private BuildView view(Context ctx, RecipeForm form, Optional<OutlookView> outlook) {
        Words words = renderer.words(ctx);
        ReadResult read = read(ctx, form);
        Optional<BuildView.AuditView> audit = form.empty()
                ? Optional.empty()
                : read.pile()
                        .flatMap(p -> site.advisor().audit(p, OptionalDouble.empty()))
                        .map(site.forecaster()::ready)
                        .map(new AuditViews(words)::view);
        return new BuildView(
                rows(words, RecipeForm.PREFIX, form.shown()),
                rows(words, RecipeForm.AT_HAND, form.shownAtHand()),
                form.size(),
                climates(form.size().getOrDefault(RecipeForm.CLIMATE, "")),
                Look.of(ctx).us() ? "in" : "cm",
                form.rows(),
                Names.of(site.knowledge()),
                faults(read, form),
                audit,
                outlook,
                HERE + "/audit.json?" + form.query());
    }

    private List<Choice> climates(String chosen) {
        return Stream.of(Place.Climate.values())
                .filter(c -> c != Place.Climate.UNKNOWN)
                .map(c -> new Choice(
                        c.token(),
                        texts.of("build.climate." + c.token()),
                        c.token().equals(chosen)))
                .toList();
    }

    private List<RowView> rows(Words words, String prefix, List<RecipeForm.Row> rows) {
        AmountUnits units = new AmountUnits(words, texts);
        List<RowView> views = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            RecipeForm.Row row = rows.get(i);
            views.add(new RowView(
                    prefix + i,
                    i + 1,
                    Names.shown(site.knowledge(), row.material()),
                    row.amount(),
                    units.choices(row.unit()),
                    CUTS.stream()
                            .map(c -> new Choice(c, words.text("web.cut." + c), c.equals(row.cut())))
                            .toList()));
        }
        return views;
    }

    private List<Fault> faults(ReadResult read, RecipeForm form) {
        return read.problems().stream().map(p -> fault(p, form)).toList();
    }

    private Fault fault(Problem problem, RecipeForm form) {
        String near =
                problem.closest().map(c -> " " + texts.of("fault.near", c)).orElse("");
        Matcher place = PLACE.matcher(problem.pointer());
        if (place.matches()) {
            boolean recipe = place.group(1).equals("recipe");
            int row = Integer.parseInt(place.group(2));
            String field = "material".equals(place.group(4)) ? "material" : "amount";
            String what = texts.of(recipe ? "build.row" : "build.hand", row + 1) + ", " + texts.of("note." + field);
            String told = field.equals("material")
                    ? new MaterialFault(site.knowledge(), texts)
                            .text(
                                    what,
                                    (recipe ? form.recipe() : form.atHand())
                                            .get(row)
                                            .material(),
                                    problem)
                    : texts.of("fault.field", what, problem.found(), problem.allowed()) + near;
            return new Fault((recipe ? RecipeForm.PREFIX : RecipeForm.AT_HAND) + row + "." + field, told);
        }
        Matcher size = SIZE.matcher(problem.pointer());
        return size.matches()
                ? new Fault(
                        size.group(1),
                        texts.of("fault.field", texts.of("build." + size.group(1)), problem.found(), problem.allowed()))
                : new Fault("", problem.message());
    }
}
