package heapwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.knowledge.Figure;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Material;
import heapwright.report.Figures;
import heapwright.report.JsonText;
import heapwright.report.Layout;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists the materials that a pile document may name. */
@Command(
        name = MaterialsCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Lists materials with their figures and other names, or those that a word fits.",
        footerHeading = "%nExamples:%n",
        footer = {"  heapwright materials", "  heapwright materials horse manure"})
final class MaterialsCommand implements Callable<Integer> {

    static final String NAME = "materials";

    private final Terminal terminal;
    private final Services workshop;

    @Parameters(paramLabel = "WORD", arity = "0..*", description = "One or more words of a name or another name.")
    private List<String> words = List.of();

    @Mixin
    private OutputOptions output;

    @Mixin
    private LocalOption local;

    MaterialsCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        workshop.take(local);
        List<Material> found = found(workshop.knowledge());
        if (output.json) {
            terminal.out().println(json(found));
            return Program.OK;
        }
        if (found.isEmpty()) {
            throw new UsageFault("heapwright: no material has the word \"" + String.join(" ", words)
                    + "\" in its id, its name or another name. See all: heapwright materials");
        }
        Figures figures = new Figures(output.units, output.catalogue());
        Layout page = new Layout(terminal.bold());
        for (Material m : found) {
            page.paragraph(0, 4, page.strong(m.id()) + ": " + m.name() + ". " + numbers(m, figures));
            if (!m.aliases().isEmpty()) {
                page.paragraph(4, 0, output.catalogue().text("material.also", String.join(", ", m.aliases())));
            }
            m.keepOut()
                    .ifPresent(k -> page.paragraph(
                            4,
                            0,
                            output.catalogue().text("bar." + k.bar().id()) + ": " + k.reason() + " " + k.instead()));
        }
        terminal.out().print(page);
        return Program.OK;
    }

    private List<Material> found(Knowledge knowledge) {
        return words.isEmpty()
                ? List.copyOf(knowledge.materials().values())
                : knowledge.materialNames().fitting(String.join(" ", words)).stream()
                        .map(knowledge.materials()::get)
                        .toList();
    }

    private String numbers(Material m, Figures figures) {
        return output.catalogue()
                .text(
                        "material.figures",
                        span(m.carbonToNitrogen(), figures),
                        span(m.moisturePct(), figures),
                        figures.span(
                                figures.density(m.densityKgM3().low()),
                                figures.density(m.densityKgM3().high())),
                        m.carbonToNitrogen().source(),
                        output.catalogue()
                                .text("known." + m.carbonToNitrogen().known().id()));
    }

    private static String span(Figure figure, Figures figures) {
        return figures.round(figure.typical()) + " (" + figures.round(figure.low()) + "–" + figures.round(figure.high())
                + ")";
    }

    private static String json(List<Material> found) {
        ObjectNode root = JsonText.object("materials");
        ArrayNode rows = root.putArray("materials");
        for (Material m : found) {
            ObjectNode row = rows.addObject();
            row.put("id", m.id()).put("name", m.name()).put("group", m.group().id());
            m.aliases().forEach(row.putArray("aliases")::add);
            figure(row, "carbonToNitrogen", m.carbonToNitrogen());
            figure(row, "carbonPct", m.carbonPct());
            figure(row, "nitrogenPct", m.nitrogenPct());
            figure(row, "moisturePct", m.moisturePct());
            figure(row, "densityKgM3", m.densityKgM3());
            row.put("note", m.note());
        }
        return JsonText.write(root);
    }

    private static void figure(ObjectNode row, String name, Figure figure) {
        row.putObject(name)
                .put("low", figure.low())
                .put("typical", figure.typical())
                .put("high", figure.high())
                .put("source", figure.source())
                .put("known", figure.known().id());
    }
}
