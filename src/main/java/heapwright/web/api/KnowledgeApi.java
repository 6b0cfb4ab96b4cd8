package heapwright.web.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.knowledge.Figure;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Material;
import heapwright.report.JsonText;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;

/** The tables of the knowledge base for programs. */
final class KnowledgeApi {

    private final Knowledge knowledge;

    KnowledgeApi(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    void register(RoutesConfig routes) {
        routes.get("/api/signs", this::signs);
        routes.get("/api/causes", this::causes);
        routes.get("/api/remedies", this::remedies);
        routes.get("/api/materials", this::materials);
        routes.get("/api/sources", this::sources);
    }

    private void signs(Context ctx) {
        ObjectNode root = JsonText.object("signs");
        ArrayNode rows = root.putArray("signs");
        knowledge
                .signs()
                .values()
                .forEach(s -> rows.addObject()
                        .put("id", s.id().id())
                        .put("sense", s.sense().id())
                        .put("ask", s.ask())
                        .put("how", s.how())
                        .put("short", s.shortName()));
        AdviceApi.json(ctx, JsonText.write(root));
    }

    private void causes(Context ctx) {
        ObjectNode root = JsonText.object("causes");
        ArrayNode rows = root.putArray("causes");
        knowledge.causes().values().forEach(c -> {
            ObjectNode row = rows.addObject()
                    .put("id", c.id().id())
                    .put("name", c.name())
                    .put("kind", c.kind().id())
                    .put("summary", c.summary())
                    .put("why", c.why())
                    .put("baseRate", c.baseRate())
                    .put("known", c.known().id());
            list(row, "sources", c.sources());
        });
        AdviceApi.json(ctx, JsonText.write(root));
    }

    private void remedies(Context ctx) {
        ObjectNode root = JsonText.object("remedies");
        ArrayNode rows = root.putArray("remedies");
        knowledge.remedies().values().forEach(r -> {
            ObjectNode row = rows.addObject()
                    .put("id", r.id().id())
                    .put("name", r.name())
                    .put("how", r.how())
                    .put("urgency", r.urgency().id())
                    .put("expect", r.expect())
                    .put("otherwise", r.otherwise())
                    .put("notWhen", r.notWhen())
                    .put("known", r.known().id());
            list(row, "sources", r.sources());
        });
        AdviceApi.json(ctx, JsonText.write(root));
    }

    private void materials(Context ctx) {
        String wanted = ctx.queryParam("q");
        List<Material> found = wanted == null || wanted.isBlank()
                ? List.copyOf(knowledge.materials().values())
                : knowledge.materialNames().fitting(wanted).stream()
                        .map(knowledge.materials()::get)
                        .toList();
        ObjectNode root = JsonText.object("materials");
        ArrayNode rows = root.putArray("materials");
        found.forEach(m -> {
            ObjectNode row = rows.addObject()
                    .put("id", m.id())
                    .put("name", m.name())
                    .put("group", m.group().id());
            list(row, "aliases", m.aliases());
            figure(row.putObject("carbonToNitrogen"), m.carbonToNitrogen());
            figure(row.putObject("moisturePct"), m.moisturePct());
            figure(row.putObject("densityKgM3"), m.densityKgM3());
            m.keepOut()
                    .ifPresent(k ->
                            row.putObject("keepOut").put("bar", k.bar().id()).put("reason", k.reason()));
        });
        AdviceApi.json(ctx, JsonText.write(root));
    }

    private void sources(Context ctx) {
        ObjectNode root = JsonText.object("sources");
        ArrayNode rows = root.putArray("sources");
        knowledge.sources().values().forEach(s -> {
            ObjectNode row = rows.addObject()
                    .put("key", s.key())
                    .put("what", s.what())
                    .put("known", s.known().id());
            s.address().ifPresent(a -> row.put("address", a));
        });
        AdviceApi.json(ctx, JsonText.write(root));
    }

    private static void figure(ObjectNode node, Figure figure) {
        node.put("low", figure.low())
                .put("typical", figure.typical())
                .put("high", figure.high())
                .put("source", figure.source())
                .put("known", figure.known().id());
    }

    private static void list(ObjectNode row, String field, List<String> values) {
        values.forEach(row.putArray(field)::add);
    }
}
