package heapwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import heapwright.casebook.Mentions;
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
    private final Workshop workshop;

    @Parameters(paramLabel = "ID", description = "Its id, as advice and the pages of knowledge write it.")
    private String id;

    @Option(
            names = "--cases",
            paramLabel = "FOLDER",
            description =
                    "Also name the cases of this folder that speak of it; for a rule the one that fails without it.")
    private Path folder;

    @Mixin
    private OutputOptions output;

    @Mixin
    private LocalOption local;

    ExplainCommand(Terminal terminal, Workshop workshop) {
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
        List<String> cases = folder == null ? List.of() : holding();
        terminal.out().print(output.json ? json(all, cases) + "\n" : page(words, all, cases));
        return Program.OK;
    }

    private List<String> holding() {
        List<Case> cases = new Casebook(workshop.knowledge()).below(folder);
        boolean rule = workshop.advisor().rules().stream().anyMatch(r -> r.id().equals(id));
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

    private String page(Words words, List<Told> all, List<String> cases) {
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
        }
        return page.toString();
    }

    private String json(List<Told> all, List<String> cases) {
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
        }
        return JsonText.write(root);
    }
}
