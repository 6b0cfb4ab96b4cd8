package heapwright.web.api;

import heapwright.advice.Advice;
import heapwright.advice.WhatIf;
import heapwright.advice.audit.Audit;
import heapwright.knowledge.Remedy;
import heapwright.pile.Pile;
import heapwright.report.AdviceJson;
import heapwright.report.AuditJson;
import heapwright.report.Catalogue;
import heapwright.report.Units;
import heapwright.report.WhatIfJson;
import heapwright.report.Words;
import heapwright.web.guard.ProblemResponse;
import heapwright.web.site.Site;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Advice and audits for programs. */
final class AdviceApi {

    private final Site site;
    private final Catalogue texts;
    private final Documents documents;
    private final Map<Units, Words> words;

    AdviceApi(Site site, Documents documents) {
        this.site = site;
        this.texts = site.catalogue();
        this.documents = documents;
        this.words = Words.byUnits(site.advisor().knowledge(), texts);
    }

    void register(RoutesConfig routes) {
        routes.post("/api/checkup", ctx -> send(ctx, documents.pile(ctx)));
        routes.post("/api/audit", this::audit);
        routes.post("/api/what-if", ctx -> sendWhatIf(ctx, documents.pile(ctx)));
    }

    /** Sends what the steps that the request names would do to a pile. */
    void sendWhatIf(Context ctx, Pile pile) {
        List<Remedy> steps = ctx.queryParams("step").stream().map(this::remedy).toList();
        WhatIf whatIf = WhatIf.of(
                        site.desk().advise(pile), steps, site.advisor().knowledge())
                .orElseThrow(() -> ProblemResponse.of(422, texts.text("web.api.no-course")));
        for (Remedy step : steps) {
            if (!whatIf.chosen(step)) {
                String advised = whatIf.choices().stream()
                        .map(c -> c.option().remedy().id())
                        .collect(Collectors.joining(", "));
                throw ProblemResponse.of(422, texts.text("web.api.not-advised", step.id(), advised));
            }
        }
        json(ctx, new WhatIfJson(words(ctx), site.version()).write(whatIf));
    }

    private Remedy remedy(String id) {
        return Arrays.stream(Remedy.values())
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow(() -> ProblemResponse.of(400, texts.text("web.api.step", id)));
    }

    /** Sends the advice on a pile. */
    void send(Context ctx, Pile pile) {
        Advice advice = site.desk().advise(pile);
        boolean trace = "true".equals(ctx.queryParam("trace"));
        json(ctx, new AdviceJson(words(ctx), site.version()).write(advice, trace));
    }

    private void audit(Context ctx) {
        Audit audit = site.advisor()
                .audit(documents.pile(ctx), ownRatio(ctx))
                .map(site.forecaster()::ready)
                .orElseThrow(() -> ProblemResponse.of(422, texts.text("web.api.no-recipe")));
        json(ctx, new AuditJson(words(ctx), site.version()).write(audit));
    }

    private OptionalDouble ownRatio(Context ctx) {
        String given = ctx.queryParam("ownRatio");
        if (given == null) {
            return OptionalDouble.empty();
        }
        if (!given.matches("[0-9]{1,4}(\\.[0-9]{1,4})?")) {
            throw ProblemResponse.of(400, texts.text("web.api.own-ratio"));
        }
        return OptionalDouble.of(Double.parseDouble(given));
    }

    private Words words(Context ctx) {
        String units = ctx.queryParam("units");
        if (units != null && !units.equals("metric") && !units.equals("us")) {
            throw ProblemResponse.of(400, texts.text("web.api.units"));
        }
        return words.get("us".equals(units) ? Units.US : Units.METRIC);
    }

    static void json(Context ctx, String document) {
        ctx.contentType("application/json").result(document);
    }
}
