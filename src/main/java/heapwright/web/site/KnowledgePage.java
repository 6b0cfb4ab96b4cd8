package heapwright.web.site;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.SourceInfo;
import heapwright.report.Words;
import heapwright.web.guard.Refusal;
import heapwright.web.view.AdviceView.CautionView;
import heapwright.web.view.AdviceViews;
import heapwright.web.view.KnowledgeView;
import heapwright.web.view.KnowledgeView.Article;
import heapwright.web.view.KnowledgeView.Cautions;
import heapwright.web.view.KnowledgeView.Entry;
import heapwright.web.view.KnowledgeView.Group;
import heapwright.web.view.KnowledgeView.Source;
import heapwright.web.view.KnowledgeView.Sources;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Causes, remedies, materials, cautions and sources, to browse and to search. */
final class KnowledgePage {

    private static final String HERE = "/knowledge";
    private static final int LONGEST_SEARCH = 80;

    /** So many of what was found are read at once, some two screens of a phone. */
    private static final int SHOWN = 12;

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

    private void list(Context ctx, String shelf, List<Group> groups) {
        page(ctx, texts.of("knowledge." + shelf), "knowledge", KnowledgeView.of(shelf, "", groups));
    }

    private void search(Context ctx) {
        String given = Optional.ofNullable(ctx.queryParam("q")).orElse("").strip();
        String searched = given.length() > LONGEST_SEARCH ? given.substring(0, LONGEST_SEARCH) : given;
        List<Group> all = everything(articles(ctx));
        List<Group> groups = searched.isEmpty()
                ? all.stream()
                        .map(g -> new Group(
                                g.name(), g.entries().stream().map(Entry::brief).toList()))
                        .toList()
                : shown(found(all, searched.toLowerCase(Locale.ROOT)));
        page(ctx, texts.of("knowledge.title"), "knowledge", KnowledgeView.of("search", searched, groups));
    }

    /** All entries, a group for each table. */
    private List<Group> everything(Articles articles) {
        return List.of(
                group("causes", causes(articles)),
                group("remedies", remedies(articles)),
                group("materials", materials(articles)),
                new Group(texts.of("knowledge.cautions"), cautions()),
                new Group(texts.of("knowledge.sources"), sources()));
    }

    private Group group(String shelf, List<Group> parts) {
        return new Group(
                texts.of("knowledge." + shelf),
                parts.stream().flatMap(g -> g.entries().stream()).toList());
    }

    /** The first of what was found at once, the rest folded away. */
    private List<Group> shown(List<Entry> found) {
        int first = Math.min(SHOWN, found.size());
        Group shown = new Group("", found.subList(0, first));
        return first == found.size()
                ? List.of(shown)
                : List.of(shown, new Group(texts.of("knowledge.further"), found.subList(first, found.size())));
    }

    /** Entries whose name, other names or line have every word that is searched for; names first. */
    private static List<Entry> found(List<Group> all, String searched) {
        List<Entry> byName = new ArrayList<>();
        List<Entry> byLine = new ArrayList<>();
        List<String> wanted = List.of(searched.split("\\s+"));
        all.stream().flatMap(g -> g.entries().stream()).forEach(entry -> {
            String names = (entry.name() + " " + entry.also()).toLowerCase(Locale.ROOT);
            String whole = names + " " + entry.line().toLowerCase(Locale.ROOT);
            if (wanted.stream().allMatch(names::contains)) {
                byName.add(entry);
            } else if (wanted.stream().allMatch(whole::contains)) {
                byLine.add(entry);
            }
        });
        byName.addAll(byLine);
        return byName;
    }

    private List<Group> causes(Articles articles) {
        return grouped(
                knowledge.causes().values(),
                c -> texts.of("knowledge.causes." + c.kind().id()),
                articles::entry);
    }

    private List<Group> remedies(Articles articles) {
        return grouped(
                knowledge.remedies().values(),
                r -> texts.shared("urgency." + r.urgency().id()),
                articles::entry);
    }

    private List<Group> materials(Articles articles) {
        return grouped(
                knowledge.materials().values(),
                m -> texts.of("knowledge.materials." + m.group().id()),
                articles::entry);
    }

    private static <T> List<Group> grouped(Collection<T> all, Function<T, String> name, Function<T, Entry> entry) {
        return parted(all, name).entrySet().stream()
                .map(part -> new Group(
                        part.getKey(), part.getValue().stream().map(entry).toList()))
                .toList();
    }

    /** By name, in the order of the first of each. */
    private static <T> Map<String, List<T>> parted(Collection<T> all, Function<T, String> name) {
        return all.stream().collect(Collectors.groupingBy(name, LinkedHashMap::new, Collectors.toList()));
    }

    private List<Entry> cautions() {
        return knowledge.cautions().values().stream()
                .map(c -> new Entry(
                        texts.of("knowledge.caution"), HERE + "/cautions#" + c.id().id(), c.title(), c.text(), ""))
                .toList();
    }

    private List<Entry> sources() {
        return knowledge.sources().values().stream()
                .map(s -> new Entry(texts.of("knowledge.source"), HERE + "/sources#" + s.key(), s.key(), s.what(), ""))
                .toList();
    }

    private void cautions(Context ctx) {
        List<CautionView> all = new AdviceViews(renderer.words(ctx))
                .cautions(knowledge.cautions().keySet());
        List<Cautions> groups = parted(all, CautionView::word).entrySet().stream()
                .map(part -> new Cautions(part.getKey(), part.getValue()))
                .toList();
        page(ctx, texts.of("knowledge.cautions"), "cautions", groups);
    }

    /** By their first letter. */
    private void sources(Context ctx) {
        Words words = renderer.words(ctx);
        List<Source> all = knowledge.sources().values().stream()
                .map(s -> source(s, words))
                .sorted(Comparator.comparing(Source::key))
                .toList();
        List<Sources> groups =
                parted(all, s -> texts.of("knowledge.sources.letter", s.key().substring(0, 1))).entrySet().stream()
                        .map(part -> new Sources(part.getKey(), part.getValue()))
                        .toList();
        page(ctx, texts.of("knowledge.sources"), "sources", groups);
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
