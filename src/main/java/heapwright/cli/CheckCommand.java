package heapwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.author.Check;
import heapwright.author.CheckReport;
import heapwright.casebook.Case;
import heapwright.report.JsonText;
import heapwright.report.Layout;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells those who write tables, rows and rules of every fault at once, without a build. */
@Command(
        name = CheckCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Looks through the tables, rows of evidence and rules of a folder and tells every fault at once,"
                + " with its place and what is allowed. Ends with 2 where there are faults.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  heapwright check",
            "  heapwright check rules",
            "  heapwright check --cases cases rules",
            "  heapwright check --knowledge my-place"
        })
final class CheckCommand implements Callable<Integer> {

    static final String NAME = "check";

    private final Terminal terminal;
    private final Services workshop;

    @Parameters(
            paramLabel = "DIR",
            arity = "0..1",
            description =
                    "A folder laid out like rules/, or a part of it; without it what is shipped is looked through.")
    private Path folder;

    @Option(names = "--cases", paramLabel = "FOLDER", description = "Count sources as used that these cases name.")
    private Path cases;

    @Option(
            names = "--knowledge",
            paramLabel = "DIR",
            description = "Look through what this folder adds to what is shipped.")
    private Path local;

    @Option(names = "--json", description = "Write the answer as JSON.")
    private boolean json;

    CheckCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        if (folder != null && local != null) {
            throw new UsageFault(
                    "heapwright: give a folder like rules/ or --knowledge with one that adds to what is shipped,"
                            + " not both. Example: heapwright check --knowledge my-place");
        }
        Check check = new Check(workshop.knowledge(), workshop.advisor().rules());
        List<String> named = named();
        CheckReport report = local != null
                ? check.ofLocal(Folders.there(local, "--knowledge my-place"), named)
                : folder == null ? check.ofShipped(named) : check.of(Folders.there(folder, "rules"), named);
        terminal.out().print(json ? json(report) : page(report));
        return report.faults().isEmpty() ? Program.OK : Program.BAD_INPUT;
    }

    private List<String> named() {
        return cases == null
                ? List.of()
                : CaseFiles.all(workshop.knowledge(), cases).stream()
                        .map(Case::source)
                        .distinct()
                        .toList();
    }

    private String page(CheckReport report) {
        Layout page = new Layout(terminal.bold());
        report.faults().forEach(fault -> page.paragraph(0, 4, fault));
        if (!report.looks().isEmpty()) {
            page.line(0, page.strong("No fault, but worth a look"));
            report.looks().forEach(look -> page.paragraph(0, 4, "- " + look));
            page.blank();
        }
        String seen = counted(report.tables(), "table") + " with " + counted(report.rows(), "row") + " and "
                + counted(report.rules(), "rule");
        int faults = report.faults().size();
        page.line(0, faults == 0 ? "no faults in " + seen : counted(faults, "fault") + " in " + seen);
        return page.toString();
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String json(CheckReport report) {
        ObjectNode root = JsonText.object("check");
        root.put("tables", report.tables()).put("rows", report.rows()).put("rules", report.rules());
        report.faults().forEach(root.putArray("faults")::add);
        report.looks().forEach(root.putArray("looks")::add);
        return JsonText.write(root) + "\n";
    }
}
