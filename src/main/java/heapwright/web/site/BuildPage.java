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
import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.OutlookView;
import heapwright.web.view.OutlookViews;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A recipe before it is built: its numbers, the verdict, the mend and the plan. It changes nothing on this machine. */
final class BuildPage {

    private static final String HERE = "/build";
    private static final Pattern SIZE =
            Pattern.compile("/(?:container|place)/(length|width|height|latitude|climate).*");

    private final Site site;
    private final Renderer renderer;
    private final Texts texts;
    private final PileMaker maker;

    BuildPage(Site site, Renderer renderer, PileMaker maker) {
        this.site = site;
        this.renderer = renderer;
        this.texts = renderer.texts();
        this.maker = maker;
    }

    void register(RoutesConfig routes) {
        routes.get(HERE, ctx -> show(ctx, address(ctx)));
        routes.post(HERE, this::typed);
        routes.post(HERE + "/keep", this::keep);
        routes.post(HERE + "/live", this::live);
        routes.post(HERE + "/outlook", this::outlook);
        routes.get(HERE + "/audit.json", this::json);
    }

    private static RecipeForm address(Context ctx) {
        return RecipeForm.ofAddress(ctx::queryParams, ctx::queryParam);
    }

    private void typed(Context ctx) throws IOException {
        RecipeForm form = RecipeForm.ofForm(ctx::formParam);
        if (!faults(ctx, read(ctx, form), form).isEmpty()) {
            show(ctx, form);
        } else {
            ctx.redirect(
                    HERE + "?" + form.query() + (ctx.formParam("more") == null ? "#numbers" : ""),
                    HttpStatus.SEE_OTHER);
        }
    }

    /** Keeps the recipe as a pile; the form carries it as the address of the page does. */
    private void keep(Context ctx) throws IOException {
        RecipeForm form = RecipeForm.ofQuery(PileMaker.field(ctx, "recipe"));
        maker.make(
                ctx,
                (name, built, faults) -> {
                    if (form.empty()) {
                        faults.add(new Fault("", texts.of("build.nothing")));
                        return Optional.empty();
                    }
                    ReadResult read = site.reader()
                            .read(
                                    name,
                                    form.document(
                                            name,
                                            site.today(),
                                            built,
                                            DisplaySettings.of(ctx).us()));
                    faults.addAll(faults(ctx, read, form));
                    return read.pile();
                },
                faults -> renderer.page(
                        ctx,
                        texts.of("build.title"),
                        Page.Door.BUILD,
                        "build",
                        view(ctx, form, outlook(ctx, form), false, faults)));
    }

    private void live(Context ctx) {
        RecipeForm form = RecipeForm.ofForm(ctx::formParam);
        ctx.header("X-Heapwright-Address", HERE + "?" + form.query());
        renderer.part(ctx, "numbers", view(ctx, form, Optional.empty(), false, List.of()));
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

    /** The form with its numbers at once, and the winter ahead as soon as it is worked out. */
    private void show(Context ctx, RecipeForm form) throws IOException {
        boolean late = !form.empty() && read(ctx, form).pile().isPresent();
        BuildView view = view(ctx, form, Optional.empty(), late, List.of());
        String title = texts.of("build.title");
        if (late) {
            Renderer.Late winter = new Renderer.Late("outlook", () -> outlook(ctx, form));
            renderer.pageWithLate(ctx, title, Page.Door.BUILD, "build", view, BuildView.LATE, winter);
            return;
        }
        if (!view.faults().isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        renderer.page(ctx, title, Page.Door.BUILD, "build", view);
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
        boolean us = DisplaySettings.of(ctx).us();
        return site.reader()
                .read(
                        texts.of("build.pile"),
                        form.document(
                                texts.of("build.pile"),
                                site.today(),
                                Optional.of(new BuiltWhen(site.today(), false)),
                                us));
    }

    private BuildView view(
            Context ctx, RecipeForm form, Optional<OutlookView> outlook, boolean late, List<Fault> ofKeeping) {
        Words words = renderer.words(ctx);
        RecipeRows rows = new RecipeRows(words, texts);
        ReadResult read = read(ctx, form);
        Optional<BuildView.AuditView> audit = form.empty()
                ? Optional.empty()
                : read.pile()
                        .flatMap(p -> site.advisor().audit(p, OptionalDouble.empty()))
                        .map(site.forecaster()::ready)
                        .map(new AuditViews(words)::view);
        return new BuildView(
                rows.view(RecipeForm.PREFIX, form.shown()),
                rows.view(RecipeForm.AT_HAND, form.shownAtHand()),
                form.size(),
                climates(form.size().getOrDefault(RecipeForm.CLIMATE, "")),
                DisplaySettings.of(ctx).us() ? "in" : "cm",
                form.rows(),
                MaterialChoices.of(site.knowledge()),
                faults(ctx, read, form),
                audit,
                outlook,
                late,
                HERE + "/audit.json?" + form.query(),
                new BuildView.KeepView(
                        form.query(),
                        PileMaker.field(ctx, "name"),
                        ctx.formParam("built") == null ? texts.of("build.keep.today") : PileMaker.field(ctx, "built"),
                        ofKeeping,
                        new Keepers(site, texts)::offered));
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

    private List<Fault> faults(Context ctx, ReadResult read, RecipeForm form) {
        Words words = renderer.words(ctx);
        String unit = DisplaySettings.of(ctx).us() ? "in" : "cm";
        return read.problems().stream()
                .map(p -> fault(words, p, form, unit))
                .distinct()
                .toList();
    }

    private Fault fault(Words words, Problem problem, RecipeForm form, String lengthUnit) {
        FaultWords told = new FaultWords(texts);
        return new RecipeRows(words, texts)
                .fault(problem, form.recipe(), form.atHand())
                .orElseGet(() -> {
                    Matcher size = SIZE.matcher(problem.pointer());
                    if (!size.matches()) {
                        return told.other(problem);
                    }
                    String field = size.group(1);
                    String typed = form.size().getOrDefault(field, "");
                    String unit = RecipeForm.ofPlace(field) ? "" : lengthUnit;
                    return new Fault(field, told.text(texts.of("build." + field), field, typed, unit, problem));
                });
    }
}
