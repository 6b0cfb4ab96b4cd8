package heapwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import heapwright.casebook.Mentions;
import heapwright.casebook.RuleCases;
import heapwright.casebook.RuleHolds;
import heapwright.pile.Closest;
import heapwright.report.ExplainText;
import heapwright.report.ExplainText.Told;
import heapwright.report.JsonText;
import heapwright.report.Layout;
import heapwright.report.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells of one thing that is known what it says, why, from where, and which cases hold it. */
@Command(
        name = ExplainCommand.NAME,
        mixinStandardHelpOptions = true,
        description =
                "Tells of a cause, remedy, sign, caution, limit, material, source, rule or row of evidence what it "
                        + "says, why, from where and how that is known.",
        footerHeading = "%nExamples:%n",
        footer = {"  heapwright explain too-wet", "  heapwright explain WEIGH-601 --cases cases"})
final class ExplainCommand implements Callable<Integer> {

    static final String NAME = "explain";

    private final Terminal terminal;
    private final Services workshop;

    @Parameters(paramLabel = "ID", description = "Its id, as advice and the pages of knowledge write it.")
    private String id;

    @Option(
            names = "--cases",
            paramLabel = "FOLDER",
            description =
                    "Also name the cases of this folder that speak of it; for a rule the one that fails without it, and"
                            + " all in which it speaks.")
    private Path folder;

    @Mixin
    private OutputOptions output;

    @Mixin
    private LocalOption local;

    ExplainCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        workshop.take(local);
        Words words = new Words(workshop.knowledge(), output.catalogue(), output.units);
        ExplainText explain = new ExplainText(words, workshop.advisor().rules());
        List<Told> all = explain.of(id);
        if (all.isEmpty()) {
            throw new UsageFault("heapwright: nothing is known by the id \"" + id + "\"."
                    + Closest.to(id, explain.ids())
                            .map(near -> " Did you mean \"" + near + "\"?")
                            .orElse("")
                    + " Ids stand in docs/knowledge and in what signs, materials and rules list."
                    + " Example: heapwright explain too-wet");
        }
        List<Case> below = folder == null ? List.of() : CaseFiles.all(workshop.knowledge(), folder);
        boolean rule = workshop.advisor().rules().stream().anyMatch(r -> r.id().equals(id));
        List<String> cases = holding(below, rule);
        List<String> speaks = rule && folder != null ? speaking(below) : List.of();
        terminal.out().print(output.json ? json(all, cases, speaks) + "\n" : page(words, all, cases, speaks));
        return Program.OK;
    }

    /** The files of the cases in which the rule speaks, but for those because of which nothing is ever changed. */
    private List<String> speaking(List<Case> below) {
        return RuleCases.of(workshop.advisor(), Casebook.open(below, folder)).getOrDefault(id, List.of()).stream()
                .map(Case::file)
                .toList();
    }

    private List<String> holding(List<Case> cases, boolean rule) {
        return rule
                ? new RuleHolds(workshop.advisor(), cases)
                        .of(r -> r.id().equals(id)).stream()
                                .flatMap(hold -> hold.holder().stream())
                                .map(ExplainCommand::line)
                                .toList()
                : Mentions.of(id, cases).stream().map(ExplainCommand::line).toList();
    }

    private static String line(Case one) {
        return one.file() + ": " + one.says();
    }

    private String page(Words words, List<Told> all, List<String> cases, List<String> speaks) {
        Layout page = new Layout(terminal.bold());
        for (Told told : all) {
            page.heading(
                    words.text("explain.heading", words.text("explain.kind." + told.kind()), told.id(), told.name()));
            told.lines().forEach(l -> page.paragraph(2, 4, words.text("explain." + l.key()) + ": " + l.text()));
        }
        if (folder != null) {
            page.blank();
            page.paragraph(0, 2, words.text("explain.cases", cases.size()));
            cases.forEach(c -> page.paragraph(2, 4, c));
            if (!speaks.isEmpty()) {
                page.paragraph(0, 2, words.text("explain.speaks", speaks.size()));
                speaks.forEach(file -> page.paragraph(2, 4, file));
            }
        }
        return page.toString();
    }

    private String json(List<Told> all, List<String> cases, List<String> speaks) {
        ObjectNode root = JsonText.object("explained");
        ArrayNode things = root.putArray("things");
        for (Told told : all) {
            ObjectNode thing = things.addObject()
                    .put("kind", told.kind())
                    .put("id", told.id())
                    .put("name", told.name());
            ArrayNode lines = thing.putArray("lines");
            told.lines().forEach(l -> lines.addObject().put("key", l.key()).put("text", l.text()));
        }
        if (folder != null) {
            cases.forEach(root.putArray("cases")::add);
            speaks.forEach(root.putArray("speaksIn")::add);
        }
        return JsonText.write(root);
    }
}
