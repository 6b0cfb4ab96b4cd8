package heapwright.docs;

import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.knowledge.Known;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The pages of {@code docs/knowledge}, made from the tables and the rules. */
final class KnowledgePages {

    /** How a rule can be known; none is measured on a pile. */
    private static final Set<Known> KNOWN = EnumSet.complementOf(EnumSet.of(Known.MEASURED));

    private final Doctrine doctrine = new Doctrine();

    /** Every page by its file name. */
    Map<String, String> all() {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("README.md", index());
        pages.put("dangers.md", new DangerPage(doctrine).write());
        pages.put("causes.md", new CausePage(doctrine).write());
        pages.put("remedies.md", new RemedyPage(doctrine).write());
        pages.put("home-remedies.md", new HomeRemedyPage(doctrine).write());
        pages.put("cautions.md", new CautionPage(doctrine).write());
        pages.put("signs.md", new SignPage(doctrine).write());
        pages.put("materials.md", new MaterialPage(doctrine).write());
        pages.put("limits.md", new LimitPage(doctrine).write());
        pages.put("survival.md", new SurvivalPage(doctrine).write());
        pages.put("use.md", new UsePage(doctrine).write());
        pages.put("seasons.md", new SeasonsPage(doctrine).write());
        pages.put("sources.md", new SourcePage(doctrine).write());
        return pages;
    }

    private String index() {
        Page page = new Page("What Heapwright knows");
        page.paragraph("These pages are made from `rules/` and change only with it. To write them anew: `"
                + Papers.REFRESH + "`.");
        page.bullets(List.of(
                counted("dangers.md", doctrine.knowledge.dangers().size(), "dangers", "what comes before all else"),
                counted("causes.md", doctrine.knowledge.causes().size(), "causes", "what may be wrong, or right"),
                counted("remedies.md", doctrine.knowledge.remedies().size(), "remedies", "what can be done"),
                counted(
                        "home-remedies.md",
                        doctrine.knowledge.usualDoses().size(),
                        "home remedies",
                        "what people give by habit, weighed"),
                counted("cautions.md", doctrine.knowledge.cautions().size(), "cautions", "what to beware of"),
                counted("signs.md", doctrine.knowledge.signs().size(), "signs", "what can be noticed"),
                counted(
                        "materials.md",
                        doctrine.knowledge.materials().size(),
                        "materials",
                        "what goes in or stays out"),
                counted(
                        "limits.md",
                        doctrine.knowledge.limits().size(),
                        "limits",
                        "the edges, and where sources differ"),
                counted(
                        "survival.md",
                        doctrine.knowledge.sanitation().survivors().size(),
                        "weeds, pests and diseases",
                        "what heat kills, and by which rules"),
                counted(
                        "use.md",
                        doctrine.knowledge.endUse().uses().size(),
                        "uses of compost",
                        "how much of it, home tests, waiting times"),
                counted("seasons.md", doctrine.knowledge.season().size(), "jobs of the seasons", "what to do when"),
                counted("sources.md", doctrine.knowledge.sources().size(), "sources", "where it all comes from")));
        page.section("Rules and rows of evidence");
        page.paragraph(doctrine.rules().size() + " rules and "
                + doctrine.knowledge.evidence().size()
                + " rows of evidence (pass weigh), by pass and by what they rest on:");
        page.head(columns());
        for (Pass pass : Pass.values()) {
            page.row(counts(pass));
        }
        return page.write();
    }

    private static String counted(String file, int many, String what, String about) {
        return "[" + many + " " + what + "](" + file + "): " + about;
    }

    private String[] columns() {
        List<String> columns = KNOWN.stream().map(doctrine::known).collect(Collectors.toList());
        columns.add(0, "Pass");
        columns.add("All");
        return columns.toArray(String[]::new);
    }

    private String[] counts(Pass pass) {
        List<RuleInfo> rules =
                doctrine.rulesAndRows().stream().filter(r -> r.pass() == pass).toList();
        List<String> cells = KNOWN.stream()
                .map(k -> String.valueOf(
                        rules.stream().filter(r -> r.evidence() == k).count()))
                .collect(Collectors.toList());
        cells.add(0, pass.id());
        cells.add(String.valueOf(rules.size()));
        return cells.toArray(String[]::new);
    }
}
