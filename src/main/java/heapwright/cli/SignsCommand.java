package heapwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.knowledge.SignInfo;
import heapwright.report.JsonText;
import heapwright.report.Layout;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists the signs that a pile document may name. */
@Command(
        name = SignsCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Lists what can be noticed at a pile, with how to check it.",
        footerHeading = "%nExample:%n",
        footer = "  heapwright signs")
final class SignsCommand implements Callable<Integer> {

    static final String NAME = "signs";

    private final Terminal terminal;
    private final Services workshop;

    @Mixin
    private OutputOptions output;

    SignsCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() {
        if (output.json) {
            terminal.out().println(json());
            return Program.OK;
        }
        Layout page = new Layout(terminal.bold());
        SignInfo.Sense sense = null;
        for (SignInfo sign : workshop.knowledge().signs().values()) {
            if (sign.sense() != sense) {
                sense = sign.sense();
                page.heading(output.catalogue().text("sense." + sense.id()));
            }
            page.paragraph(2, 4, sign.id().id() + ": " + sign.ask() + " " + sign.how());
        }
        terminal.out().print(page);
        return Program.OK;
    }

    private String json() {
        ObjectNode root = JsonText.object("signs");
        ArrayNode rows = root.putArray("signs");
        workshop.knowledge()
                .signs()
                .values()
                .forEach(s -> rows.addObject()
                        .put("id", s.id().id())
                        .put("sense", s.sense().id())
                        .put("ask", s.ask())
                        .put("how", s.how()));
        return JsonText.write(root);
    }
}
