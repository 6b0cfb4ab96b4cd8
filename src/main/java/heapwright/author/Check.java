package heapwright.author;

import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.knowledge.Inspection;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeFolder;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.LocalKnowledge;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Looks through tables, rows of evidence and the text of rules, and tells everything that it finds at once. */
public final class Check {

    private final Knowledge shipped;
    private final List<RuleInfo> rules;

    /**
     * @param shipped the tables packed with the program, which stand in for those that a folder has not
     * @param rules what the rules packed with the program say of themselves
     */
    public Check(Knowledge shipped, List<RuleInfo> rules) {
        this.shipped = shipped;
        this.rules = rules.stream().filter(r -> r.pass() != Pass.WEIGH).toList();
    }

    /**
     * Looks through what is packed with the program.
     *
     * @param named keys of sources that something else names, such as cases
     */
    public CheckReport ofShipped(Collection<String> named) {
        Inspection inspection = KnowledgeReader.inspect(KnowledgeReader::packed, shipped);
        return report(inspection, List.of(), List.of(), rules.size(), named);
    }

    /**
     * Looks through a folder laid out like {@code rules/}. A table that it has not is taken from what is shipped.
     *
     * @param folder a folder that is there
     * @param named as above
     */
    public CheckReport of(Path folder, Collection<String> named) {
        KnowledgeFolder tables = new KnowledgeFolder(folder);
        Inspection inspection = KnowledgeReader.inspect(tables, shipped);
        List<String> faults = new ArrayList<>(tables.strays(KnowledgeReader.files()));
        List<RuleFile> files = RuleFile.below(folder, faults);
        Set<String> sources = new TreeSet<>(shipped.sources().keySet());
        inspection.knowledge().ifPresent(k -> {
            sources.clear();
            sources.addAll(k.sources().keySet());
        });
        faults.addAll(new RuleCheck(sources).faults(files));
        int count = files.stream().mapToInt(f -> f.rules().size()).sum();
        if (faults.isEmpty()
                && inspection.faults().isEmpty()
                && inspection.counts().isEmpty()
                && count == 0) {
            faults.add(folder
                    + ": found no tables, no evidence and no rules. Allowed: a folder laid out like rules/, or a"
                    + " part of it. Example: " + folder.resolve("evidence").resolve("too-wet.json"));
        }
        return report(inspection, faults, files, count, named);
    }

    /**
     * Looks through what a place adds to what is shipped.
     *
     * @param folder a folder that is there
     * @param named as above
     */
    public CheckReport ofLocal(Path folder, Collection<String> named) {
        return report(LocalKnowledge.inspect(folder, shipped), List.of(), List.of(), 0, named);
    }

    private CheckReport report(
            Inspection inspection, List<String> more, List<RuleFile> files, int count, Collection<String> named) {
        List<String> faults =
                Stream.concat(inspection.faults().stream(), more.stream()).toList();
        List<String> looks = faults.isEmpty()
                ? inspection.knowledge().map(k -> looks(k, files, named)).orElse(List.of())
                : List.of();
        return new CheckReport(
                faults,
                looks,
                inspection.counts().size(),
                inspection.counts().values().stream().mapToInt(i -> i).sum(),
                count);
    }

    private List<String> looks(Knowledge knowledge, List<RuleFile> files, Collection<String> named) {
        List<String> looks = new ArrayList<>();
        Set<String> sources = new TreeSet<>(named);
        boolean whole = whole(files);
        if (!whole) {
            rules.forEach(rule -> sources.add(rule.source()));
        }
        files.forEach(file -> file.rules().forEach(rule -> rule.meta("source").ifPresent(sources::add)));
        looks.addAll(new DeadEntries(knowledge, whole ? RuleReach.of(files) : RuleReach.everything()).looks());
        looks.addAll(new Lengths(knowledge, files).looks());
        looks.addAll(new UnusedSources(knowledge, sources).looks());
        return looks;
    }

    /** Whether these rules can stand alone: each pass has some. */
    private static boolean whole(List<RuleFile> files) {
        Set<String> passes = files.stream().map(RuleFile::pass).collect(Collectors.toSet());
        return EnumSet.allOf(Pass.class).stream().allMatch(pass -> passes.contains(pass.id()));
    }
}
