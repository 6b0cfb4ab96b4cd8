package heapwright.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.pile.Pile;
import heapwright.pile.PileWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

/** Piles as bytes for a file, and the names of copies that are kept. */
final class Drafts {

    /** The longest name that a document takes, in characters. */
    private static final int LONGEST_NAME = 120;

    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
    private static final DateTimeFormatter IN_SLUG = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmm");

    private final PileWriter writer = new PileWriter();
    private final ObjectMapper mapper = new ObjectMapper();

    /** The document of a pile, with the case object that stood in the file. */
    byte[] bytes(Pile pile, Optional<JsonNode> caseObject) {
        return caseObject.map(node -> withCase(pile, node)).orElseGet(() -> writer.bytes(pile));
    }

    /** The pile under a name that tells it from the one it was to replace. */
    Pile kept(Pile pile, LocalDateTime now) {
        String ending = ", kept " + SHOWN.format(now);
        String name = pile.name();
        int room = LONGEST_NAME - ending.length();
        if (name.codePointCount(0, name.length()) > room) {
            name = name.substring(0, name.offsetByCodePoints(0, room)).stripTrailing();
        }
        return Noting.renamed(pile, name + ending);
    }

    /** The slug for such a copy. */
    String keptSlug(Pile pile, LocalDateTime now) {
        return Slug.of(pile.name()) + "-kept-" + IN_SLUG.format(now);
    }

    private byte[] withCase(Pile pile, JsonNode caseObject) {
        ObjectNode tree = writer.tree(pile);
        tree.set("case", caseObject);
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
        try {
            return (mapper.writer(printer).writeValueAsString(tree) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree that was read did not write", e);
        }
    }
}
