package heapwright.docs;

import heapwright.advice.engine.Rows;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Rulebook;
import heapwright.docs.RuleText.Insertion;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.EvidenceWords;
import heapwright.knowledge.Id;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Known;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.When;
import heapwright.report.Catalogue;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tables and rules together, and the words that the pages share. */
final class Doctrine {

    final Knowledge knowledge = KnowledgeReader.packed();
    final Catalogue catalogue = Catalogue.english();
    private final Map<String, RuleText> texts =
            RuleText.all().stream().collect(Collectors.toMap(RuleText::id, t -> t, (a, b) -> a, LinkedHashMap::new));
    private final List<RuleInfo> rules = Rulebook.packed().rules();
    private final Map<String, List<Teaching>> byFact = rules.stream()
            .flatMap(r -> text(r).inserts().stream().map(i -> new Teaching(r, text(r), i)))
            .collect(Collectors.groupingBy(t -> t.insertion().fact()));
    /** The remedies that a part of what a rule inserts stands for, by the id of the rule and the part. */
    private final Map<String, Set<Remedy>> meant = new HashMap<>();

    private final EvidenceWords words = new EvidenceWords(knowledge, this::word);

    /**
     * A rule with one of its insertions.
     *
     * @param info what the rule says of itself
     * @param text its text
     * @param insertion what it inserts
     */
    record Teaching(RuleInfo info, RuleText text, Insertion insertion) {

        /** What it speaks on, in words. */
        String on() {
            return text.words();
        }
    }

    /** The part of this number in words, where a rule speaks of all steps but some. */
    Optional<String> breadth(Teaching t, int part) {
        return t.text().breadth(t.insertion().parts().get(part), this::remedy);
    }

    List<RuleInfo> rules() {
        return rules;
    }

    /** The rules and the rows of evidence. */
    List<RuleInfo> rulesAndRows() {
        return Stream.concat(rules.stream(), new Rows(knowledge).infos().stream())
                .toList();
    }

    /** The ids of the rows of evidence that wait for something, in order. */
    Stream<String> rows(Predicate<When> waits) {
        return knowledge.evidence().stream()
                .filter(row -> waits.test(row.when()))
                .map(Evidence::id)
                .sorted();
    }

    /** What a row of evidence reads, in words. */
    String words(When when) {
        return words.when(when);
    }

    private String word(String kind, Id id) {
        return catalogue.text(kind + "." + id.id()).replace("{0}", "well");
    }

    RuleText text(RuleInfo rule) {
        return texts.get(rule.id());
    }

    /** The rules that insert a fact of a kind and fulfil a demand, in order of id. */
    List<Teaching> teaching(Class<?> fact, BiPredicate<RuleText, Insertion> demand) {
        return byFact.getOrDefault(fact.getSimpleName(), List.of()).stream()
                .filter(t -> demand.test(t.text(), t.insertion()))
                .toList();
    }

    /** The rules whose insertion of a kind speaks of all steps but some, in the part of this number. */
    List<Teaching> broad(Class<?> fact, int part) {
        return teaching(
                fact,
                (text, insertion) ->
                        text.breadth(insertion.parts().get(part), this::remedy).isPresent());
    }

    /** The rules whose insertion of a kind has a remedy, named or by a variable, as its part of this number. */
    List<Teaching> teaching(Class<?> fact, Remedy remedy, int part) {
        return teaching(fact, (text, insertion) -> {
            String named = insertion.parts().get(part);
            return meant.computeIfAbsent(text.id() + " " + named, key -> text.remedies(named))
                    .contains(remedy);
        });
    }

    String known(Known known) {
        return catalogue.text("known." + known.id());
    }

    /** Keys of sources as links, with how they are known. */
    String sources(Collection<String> keys, Known known) {
        return keys.stream().map(Doctrine::source).collect(Collectors.joining(", ")) + " (" + known(known) + ")";
    }

    /** What a row of evidence rests on. */
    String ground(Evidence row) {
        return source(row.source()) + ", " + known(row.known());
    }

    /** What a rule rests on. */
    String ground(RuleInfo rule) {
        return source(rule.source()) + ", " + known(rule.evidence());
    }

    static String source(String key) {
        return "[" + key + "](sources.md#" + key.toLowerCase(java.util.Locale.ROOT) + ")";
    }

    static String link(String page, String id, String name) {
        return "[" + name + "](" + page + "#" + id + ")";
    }

    String remedy(Remedy remedy) {
        return link("remedies.md", remedy.id(), knowledge.remedies().get(remedy).name());
    }

    /** A number as briefly as it can be written. */
    static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
