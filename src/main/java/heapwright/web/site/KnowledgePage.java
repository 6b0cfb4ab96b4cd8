package heapwright.web.site;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Material;
import heapwright.knowledge.SourceInfo;
import heapwright.report.Words;
import heapwright.web.guard.Refusal;
import heapwright.web.view.AdviceViews;
import heapwright.web.view.KnowledgeView;
import heapwright.web.view.KnowledgeView.Article;
import heapwright.web.view.KnowledgeView.Entry;
import heapwright.web.view.KnowledgeView.Source;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Causes, remedies, materials, cautions and sources, to browse and to search. */
final class KnowledgePage {

    private static final String HERE = "/knowledge";
    private static final int LONGEST_SEARCH = 80;

    private final Renderer renderer;
    private final Texts texts;
    private final Knowledge knowledge;

    KnowledgePage(Site site, Renderer renderer) {
        this.renderer = renderer;
        this.texts = renderer.texts();
        this.knowledge = site.knowledge();
    }

    void register(RoutesConfig routes) {
        routes.get(HERE, this::search);
        routes.get(HERE + "/causes", ctx -> list(ctx, "causes", causes(articles(ctx))));
        routes.get(HERE + "/remedies", ctx -> list(ctx, "remedies", remedies(articles(ctx))));
        routes.get(HERE + "/materials", ctx -> list(ctx, "materials", materials(articles(ctx))));
        routes.get(HERE + "/cautions", this::cautions);
        routes.get(HERE + "/sources", this::sources);
        routes.get(HERE + "/causes/{id}", ctx -> article(ctx, articles(ctx).cause(ctx.pathParam("id"))));
        routes.get(HERE + "/remedies/{id}", ctx -> article(ctx, articles(ctx).remedy(ctx.pathParam("id"))));
        routes.get(HERE + "/materials/{id}", ctx -> article(ctx, articles(ctx).material(ctx.pathParam("id"))));
    }

    private Articles articles(Context ctx) {
        return new Articles(renderer.words(ctx), texts);
    }

    private void list(Context ctx, String shelf, List<Entry> entries) {
        page(ctx, texts.of("knowledge." + shelf), "knowledge", new KnowledgeView(shelf, "", entries));
    }

    private void search(Context ctx) {
        String given = Optional.ofNullable(ctx.queryParam("q")).orElse("").strip();
        String searched = given.length() > LONGEST_SEARCH ? given.substring(0, LONGEST_SEARCH) : given;
        List<Entry> found = searched.isEmpty() ? List.of() : found(articles(ctx), searched.toLowerCase(Locale.ROOT));
        page(ctx, texts.of("knowledge.title"), "knowledge", new KnowledgeView("search", searched, found));
    }

    /** Entries whose name, other names or line have every word that is searched for; names first. */
    private List<Entry> found(Articles articles, String searched) {
        List<Entry> byName = new ArrayList<>();
        List<Entry> byLine = new ArrayList<>();
        List<String> wanted = List.of(searched.split("\\s+"));
        for (Entry entry : Stream.of(causes(articles), remedies(articles), plain(articles))
                .flatMap(List::stream)
                .toList()) {
            sort(entry, entry.name(), wanted, byName, byLine);
        }
        for (Material m : knowledge.materials().values()) {
            Entry entry = articles.entry(m);
            sort(entry, entry.name() + " " + String.join(" ", m.aliases()), wanted, byName, byLine);
        }
        byName.addAll(byLine);
        return byName;
    }

    private static void sort(Entry entry, String names, List<String> wanted, List<Entry> byName, List<Entry> byLine) {
        String name = names.toLowerCase(Locale.ROOT);
        String all = name + " " + entry.line().toLowerCase(Locale.ROOT);
        if (wanted.stream().allMatch(name::contains)) {
            byName.add(entry);
        } else if (wanted.stream().allMatch(all::contains)) {
            byLine.add(entry);
        }
    }

    private List<Entry> causes(Articles articles) {
        return knowledge.causes().values().stream().map(articles::entry).toList();
    }

    private List<Entry> remedies(Articles articles) {
        return knowledge.remedies().values().stream().map(articles::entry).toList();
    }

    private List<Entry> materials(Articles articles) {
        return knowledge.materials().values().stream().map(articles::entry).toList();
    }

    private List<Entry> plain(Articles articles) {
        Stream<Entry> cautions = knowledge.cautions().values().stream()
                .map(c -> new Entry(
                        texts.of("knowledge.caution"), HERE + "/cautions#" + c.id().id(), c.title(), c.text()));
        Stream<Entry> sources = knowledge.sources().values().stream()
                .map(s -> new Entry(texts.of("knowledge.source"), HERE + "/sources#" + s.key(), s.key(), s.what()));
        return Stream.concat(cautions, sources).toList();
    }

    private void cautions(Context ctx) {
        page(
                ctx,
                texts.of("knowledge.cautions"),
                "cautions",
                new AdviceViews(renderer.words(ctx))
                        .cautions(knowledge.cautions().keySet()));
    }

    private void sources(Context ctx) {
        Words words = renderer.words(ctx);
        List<Source> sources =
                knowledge.sources().values().stream().map(s -> source(s, words)).toList();
        page(ctx, texts.of("knowledge.sources"), "sources", sources);
    }

    private static Source source(SourceInfo info, Words words) {
        return new Source(info.key(), info.what(), words.word("known", info.known()), info.address());
    }

    private void article(Context ctx, Optional<Article> article) {
        Article found = article.orElseThrow(Refusal::missing);
        page(ctx, found.name(), "article", found);
    }

    private void page(Context ctx, String title, String template, Object view) {
        renderer.page(ctx, title, Page.Door.KNOWLEDGE, template, view);
    }
}
