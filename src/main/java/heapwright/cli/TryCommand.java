package heapwright.cli;

import heapwright.advice.Advisor;
import heapwright.author.TableChanges;
import heapwright.author.Trial;
import heapwright.author.Trial.Compared;
import heapwright.knowledge.Inspection;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeFolder;
import heapwright.knowledge.KnowledgeReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays changed tables beside the shipped ones and tells which cases get another answer. */
@Command(
        name = TryCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Lays changed rows, limits, weights or tables beside the shipped ones and tells which cases get"
                + " another answer. Rules (.drl) need a build and are not tried.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  heapwright try rules",
            "  heapwright try --cases cases/practice rules/evidence/too-wet.json",
            "  heapwright try --knowledge my-place"
        })
final class TryCommand implements Callable<Integer> {

    static final String NAME = "try";

    private final Terminal terminal;
    private final Services workshop;

    @Parameters(
            paramLabel = "DIR|FILE",
            arity = "0..1",
            description = "A folder laid out like rules/ or a part of it, or one table by its name.")
    private Path changed;

    @Option(
            names = "--cases",
            paramLabel = "FOLDER",
            defaultValue = "cases",
            description = "The cases to put to both (default: ${DEFAULT-VALUE}).")
    private Path folder;

    @Option(names = "--json", description = "Write the answer as JSON.")
    private boolean json;

    @Mixin
    private LocalOption local;

    TryCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        if ((changed == null) == (local.folder == null)) {
            throw new UsageFault(
                    "heapwright: give either changed tables or --knowledge with a folder that adds to what is"
                            + " shipped. Example: heapwright try rules/evidence/too-wet.json");
        }
        Advisor shipped = workshop.advisor();
        Knowledge knowledge = changed == null ? local.over(shipped.knowledge()) : over(shipped.knowledge());
        List<String> changes = new TableChanges(shipped.knowledge(), knowledge).lines();
        TrialReport report =
                new TrialReport(changes, changes.isEmpty() ? List.of() : compared(shipped, knowledge), hasRules());
        terminal.out().print(json ? report.json() : report.text(terminal.bold()));
        return Program.OK;
    }

    private List<Compared> compared(Advisor shipped, Knowledge knowledge) {
        return new Trial(shipped, new Advisor(knowledge, shipped.rulebook())).of(CaseFiles.open(knowledge, folder));
    }

    private Knowledge over(Knowledge shipped) {
        if (!Files.exists(changed)) {
            throw new UsageFault("heapwright: there is no file or folder \"" + changed
                    + "\". Example: heapwright try rules/evidence/too-wet.json");
        }
        if (Files.isDirectory(changed)) {
            List<String> strays = new KnowledgeFolder(changed).strays(KnowledgeReader.files());
            if (!strays.isEmpty()) {
                throw new UsageFault("heapwright: \"" + changed + "\" cannot be tried:\n" + String.join("\n", strays));
            }
        }
        Inspection inspection = KnowledgeReader.inspect(KnowledgeFolder.shelf(changed), shipped);
        if (inspection.faults().isEmpty() && inspection.counts().isEmpty()) {
            throw new UsageFault(
                    "heapwright: \"" + changed + "\" is no table and has none. Allowed: a folder with tables"
                            + " and evidence, or one table under its own name, such as too-wet.json or limits.json."
                            + (hasRules() ? " Rules (.drl) need a build." : "")
                            + " Example: heapwright try rules/evidence/too-wet.json");
        }
        return inspection
                .knowledge()
                .orElseThrow(() -> new UsageFault(
                        "heapwright: \"" + changed + "\" cannot be tried:\n" + String.join("\n", inspection.faults())));
    }

    private boolean hasRules() {
        return changed != null && KnowledgeFolder.hasRules(changed);
    }
}
