package heapwright.report;

import heapwright.advice.engine.RuleInfo;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.Evidence.Speaks;
import heapwright.knowledge.EvidenceWords;
import heapwright.knowledge.Figure;
import heapwright.knowledge.Id;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Known;
import heapwright.knowledge.LimitInfo;
import heapwright.knowledge.Material;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.knowledge.SourceInfo;
import heapwright.knowledge.When;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells of one thing that is known what it says, why, from where, how that is known, and what speaks against it. */
public final class ExplainText {

    private final Words words;
    private final Knowledge knowledge;
    private final List<RuleInfo> rules;

    /**
     * Prepares.
     *
     * @param words the words to use
     * @param rules all rules and rows of evidence
     */
    public ExplainText(Words words, List<RuleInfo> rules) {
        this.words = words;
        this.knowledge = words.knowledge();
        this.rules = List.copyOf(rules);
    }

    /**
     * One thing.
     *
     * @param kind what it is: cause, remedy, sign, caution, limit, material, source or rule
     * @param id its id
     * @param name its name
     * @param lines what is known of it
     */
    public record Told(String kind, String id, String name, List<Line> lines) {}

    /** One statement about it: its key, and the text. */
    public record Line(String key, String text) {}

    /** Everything that can be asked for. */
    public Set<String> ids() {
        Set<String> ids = new TreeSet<>(knowledge.materials().keySet());
        ids.addAll(knowledge.sources().keySet());
        rules.forEach(r -> ids.add(r.id()));
        Stream.of(knowledge.causes(), knowledge.remedies(), knowledge.signs(), knowledge.cautions(), knowledge.limits())
                .flatMap(table -> table.keySet().stream())
                .map(Id.class::cast)
                .forEach(id -> ids.add(id.id()));
        return ids;
    }

    /** All things with this id, such as a sign and the cause that it is the first witness of; none where there is none. */
    public List<Told> of(String id) {
        return Stream.of(
                        row(knowledge.causes().values(), c -> c.id().id(), id).map(this::cause),
                        row(knowledge.remedies().values(), r -> r.id().id(), id).map(this::remedy),
                        row(knowledge.signs().values(), s -> s.id().id(), id).map(this::sign),
                        row(knowledge.cautions().values(), c -> c.id().id(), id).map(this::caution),
                        row(knowledge.limits().values(), l -> l.id().id(), id).map(this::limit),
                        row(knowledge.materials().values(), Material::id, id).map(this::material),
                        row(knowledge.sources().values(), SourceInfo::key, id).map(this::source),
                        row(rules, RuleInfo::id, id).map(this::rule))
                .flatMap(Optional::stream)
                .toList();
    }

    private static <T> Optional<T> row(Collection<T> rows, java.util.function.Function<T, String> key, String id) {
        return rows.stream().filter(r -> key.apply(r).equalsIgnoreCase(id)).findFirst();
    }

    private Told cause(CauseInfo info) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("says", info.summary()));
        lines.add(new Line("why", info.why()));
        lines.add(new Line("base", words.text("whynot.base", words.inHundred(info.baseRate()))));
        for (Speaks side : Speaks.values()) {
            knowledge.evidence().stream()
                    .filter(e -> e.cause() == info.id() && e.speaks() == side)
                    .forEach(e -> lines.add(new Line(side == Speaks.FOR ? "for" : "against", row(e))));
        }
        lines.add(new Line("tell", info.tellApart()));
        sources(lines, info.sources(), info.known());
        return new Told("cause", info.id().id(), info.name(), lines);
    }

    /** A row of evidence on a line: its id, strength, what it reads, why, and from where. */
    private String row(Evidence e) {
        return words.text(
                "explain.row",
                e.id(),
                words.word("strength", e.strength()),
                new EvidenceWords(knowledge, words::word).when(e.when()),
                e.because(),
                e.source(),
                words.word("known", e.known()));
    }

    private Told remedy(RemedyInfo info) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("how", info.how()));
        info.gently().ifPresent(light -> lines.add(new Line("gently", light)));
        info.ways()
                .forEach(way -> lines.add(new Line(
                        "way",
                        way.kinds().stream().map(k -> k.token()).collect(Collectors.joining(", ")) + ": "
                                + way.how())));
        lines.add(new Line("expect", info.expect()));
        lines.add(new Line("otherwise", info.otherwise()));
        lines.add(new Line("not", info.notWhen()));
        if (!info.undoes().isEmpty()) {
            lines.add(
                    new Line("undoes", info.undoes().stream().map(words::remedy).collect(Collectors.joining("; "))));
        }
        if (!info.cautions().isEmpty()) {
            lines.add(new Line(
                    "careful",
                    info.cautions().stream()
                            .map(c -> knowledge.cautions().get(c).title() + " (" + c.id() + ")")
                            .collect(Collectors.joining("; "))));
        }
        sources(lines, info.sources(), info.known());
        return new Told("remedy", info.id().id(), info.name(), lines);
    }

    private Told sign(SignInfo info) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("how", info.ask() + " " + info.how()));
        knowledge.evidence().stream()
                .filter(e -> reads(e.when(), info.id()))
                .forEach(e -> lines.add(new Line(
                        e.speaks() == Speaks.FOR ? "for" : "against", words.cause(e.cause()) + ". " + row(e))));
        if (!info.aliases().isEmpty()) {
            lines.add(new Line("also", String.join(", ", info.aliases())));
        }
        return new Told("sign", info.id().id(), info.say(), lines);
    }

    private static boolean reads(When when, Sign sign) {
        return when instanceof When.Seen seen && seen.anyOf().contains(sign)
                || when instanceof When.Denied denied && denied.anyOf().contains(sign);
    }

    private Told caution(CautionInfo info) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("says", words.word("severity", info.severity()) + ". " + info.text()));
        lines.add(new Line("why", info.why()));
        info.localRules().ifPresent(local -> lines.add(new Line("local", local)));
        lines.add(new Line("used", remedies(info.id())));
        lines.removeIf(line -> line.text().isEmpty());
        sources(lines, info.sources(), info.known());
        return new Told("caution", info.id().id(), info.title(), lines);
    }

    private String remedies(Caution caution) {
        return knowledge.remedies().values().stream()
                .filter(r -> r.cautions().contains(caution))
                .map(r -> r.id().id())
                .collect(Collectors.joining(", "));
    }

    private Told limit(LimitInfo info) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(
                "value", words.text("explain.limit", info.value(), info.unit(), info.lowest(), info.highest())));
        lines.add(new Line("spread", info.spread()));
        sources(lines, info.sources(), info.known());
        return new Told("limit", info.id().id(), info.name(), lines);
    }

    private Told material(Material m) {
        List<Line> lines = new ArrayList<>();
        if (!m.aliases().isEmpty()) {
            lines.add(new Line("also", String.join(", ", m.aliases())));
        }
        figure(lines, "cn", m.carbonToNitrogen());
        figure(lines, "carbon", m.carbonPct());
        figure(lines, "nitrogen", m.nitrogenPct());
        figure(lines, "moisture", m.moisturePct());
        figure(lines, "density", m.densityKgM3());
        m.ashPct().ifPresent(f -> figure(lines, "ash", f));
        m.ligninPctVs().ifPresent(f -> figure(lines, "lignin", f));
        m.saltPct().ifPresent(f -> figure(lines, "salt", f));
        m.keepOut()
                .ifPresent(k ->
                        lines.add(new Line("bar", words.word("bar", k.bar()) + ". " + k.reason() + " " + k.instead())));
        if (!m.note().isEmpty()) {
            lines.add(new Line("note", m.note()));
        }
        return new Told("material", m.id(), m.name(), lines);
    }

    private void figure(List<Line> lines, String key, Figure f) {
        lines.add(new Line(
                key,
                words.text(
                        "explain.figure",
                        words.figures().round(f.typical()),
                        words.figures().round(f.low()),
                        words.figures().round(f.high()),
                        f.source(),
                        words.word("known", f.known()))));
    }

    private Told source(SourceInfo info) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("known", words.word("known", info.known())));
        info.address().ifPresent(address -> lines.add(new Line("address", address)));
        List<String> users = Stream.of(
                        rules.stream()
                                .filter(r -> r.source().equals(info.key()))
                                .map(RuleInfo::id),
                        knowledge.limits().values().stream()
                                .filter(l -> l.sources().contains(info.key()))
                                .map(l -> l.id().id()),
                        knowledge.causes().values().stream()
                                .filter(c -> c.sources().contains(info.key()))
                                .map(c -> c.id().id()),
                        knowledge.remedies().values().stream()
                                .filter(r -> r.sources().contains(info.key()))
                                .map(r -> r.id().id()),
                        knowledge.cautions().values().stream()
                                .filter(c -> c.sources().contains(info.key()))
                                .map(c -> c.id().id()),
                        knowledge.materials().values().stream()
                                .filter(m -> m.carbonToNitrogen().source().equals(info.key()))
                                .map(Material::id))
                .flatMap(s -> s)
                .distinct()
                .toList();
        lines.add(new Line("used", users.isEmpty() ? words.text("explain.unused") : String.join(", ", users)));
        return new Told("source", info.key(), info.what(), lines);
    }

    private Told rule(RuleInfo rule) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(
                "says", words.text("explain.rule", rule.pass().id(), words.word("strength", rule.strength()))));
        lines.add(new Line("why", words.rationale(rule)));
        sources(lines, List.of(rule.source()), rule.evidence());
        return new Told("rule", rule.id(), rule.name(), lines);
    }

    private void sources(List<Line> lines, List<String> keys, Known known) {
        for (String key : keys) {
            SourceInfo source = knowledge.sources().get(key);
            lines.add(
                    new Line("source", key + ": " + source.what() + " (" + words.word("known", source.known()) + ")"));
        }
        lines.add(new Line("known", words.word("known", known)));
    }
}
