package heapwright.web.site;

import heapwright.knowledge.Cause;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.Figure;
import heapwright.knowledge.Id;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Material;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import heapwright.report.Words;
import heapwright.web.view.AdviceViews;
import heapwright.web.view.KnowledgeView.Article;
import heapwright.web.view.KnowledgeView.Entry;
import heapwright.web.view.KnowledgeView.Fact;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Pages about one thing of the knowledge tables. */
final class Articles {

    private final Words words;
    private final Texts texts;
    private final Knowledge knowledge;

    Articles(Words words, Texts texts) {
        this.words = words;
        this.texts = texts;
        this.knowledge = words.knowledge();
    }

    Optional<Article> cause(String id) {
        return find(Cause.values(), id).map(knowledge.causes()::get).map(this::cause);
    }

    Optional<Article> remedy(String id) {
        return find(Remedy.values(), id).map(knowledge.remedies()::get).map(this::remedy);
    }

    Optional<Article> material(String id) {
        return Optional.ofNullable(knowledge.materials().get(id)).map(this::material);
    }

    private static <T extends Id> Optional<T> find(T[] all, String id) {
        return Arrays.stream(all).filter(v -> v.id().equals(id)).findFirst();
    }

    private Article cause(CauseInfo info) {
        return new Article(
                "causes",
                info.name(),
                info.summary(),
                List.of(
                        fact("why", info.why()),
                        fact("tell", info.tellApart()),
                        fact("base", texts.shared("whynot.base", words.inHundred(info.baseRate())))),
                List.of(),
                "",
                List.of(),
                info.sources(),
                words.word("known", info.known()));
    }

    private Article remedy(RemedyInfo info) {
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("how", info.how()));
        info.gently().ifPresent(light -> facts.add(fact("gently", light)));
        info.ways()
                .forEach(way -> way.kinds()
                        .forEach(kind ->
                                facts.add(new Fact(texts.of("kind." + kind.token()), way.name() + ". " + way.how()))));
        facts.add(fact("when", words.word("urgency", info.urgency())));
        facts.add(fact(
                "effort",
                texts.of(
                        info.effort().heavy() ? "knowledge.effort.heavy" : "knowledge.effort.light",
                        info.effort().minutes())));
        facts.add(fact("expect", info.expect()));
        facts.add(fact(
                "days",
                texts.of(
                        "knowledge.days.span",
                        info.expectDays().from(),
                        info.expectDays().to())));
        facts.add(fact("otherwise", info.otherwise()));
        facts.add(fact("not", info.notWhen()));
        List<Entry> undone = info.undoes().stream()
                .map(knowledge.remedies()::get)
                .map(this::entry)
                .toList();
        return new Article(
                "remedies",
                info.name(),
                "",
                facts,
                undone,
                texts.of("knowledge.undoes"),
                new AdviceViews(words).cautions(info.cautions()),
                info.sources(),
                words.word("known", info.known()));
    }

    private Article material(Material m) {
        List<Fact> facts = new ArrayList<>();
        if (!m.aliases().isEmpty()) {
            facts.add(fact("aliases", String.join(", ", m.aliases())));
        }
        facts.add(fact("cn", span(m.carbonToNitrogen(), "")));
        facts.add(fact("moisture", span(m.moisturePct(), " %")));
        facts.add(fact(
                "density",
                texts.of(
                        "knowledge.density.of",
                        words.figures().density(m.densityKgM3().low()),
                        words.figures().density(m.densityKgM3().typical()),
                        words.figures().density(m.densityKgM3().high()))));
        facts.add(fact("note", m.note()));
        String lead = m.keepOut()
                .map(k -> words.word("bar", k.bar()) + ": " + k.reason() + " " + k.instead())
                .orElse("");
        List<String> sources = Stream.of(m.carbonToNitrogen(), m.moisturePct(), m.densityKgM3())
                .map(Figure::source)
                .distinct()
                .toList();
        return new Article(
                "materials",
                m.name(),
                lead,
                facts,
                List.of(),
                "",
                new AdviceViews(words).cautions(m.cautions()),
                sources,
                words.word("known", m.carbonToNitrogen().known()));
    }

    private String span(Figure f, String unit) {
        return texts.of(
                "knowledge.span",
                words.figures().round(f.typical()) + unit,
                words.figures().round(f.low()),
                words.figures().round(f.high()) + unit);
    }

    private Fact fact(String key, String text) {
        return new Fact(texts.of("knowledge." + key), text);
    }

    Entry entry(RemedyInfo info) {
        return new Entry(
                texts.of("knowledge.remedy"), "/knowledge/remedies/" + info.id().id(), info.name(), info.how(), "");
    }

    Entry entry(CauseInfo info) {
        return new Entry(
                texts.of("knowledge.cause"), "/knowledge/causes/" + info.id().id(), info.name(), info.summary(), "");
    }

    Entry entry(Material m) {
        String line = m.keepOut()
                .map(k -> words.word("bar", k.bar()))
                .orElseGet(() -> texts.of(
                        "knowledge.material.line",
                        words.figures().round(m.carbonToNitrogen().typical()),
                        words.figures().round(m.moisturePct().typical())));
        return new Entry(
                texts.of("knowledge.material"),
                "/knowledge/materials/" + m.id(),
                m.name(),
                line,
                String.join(", ", m.aliases()));
    }
}
