package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads pile documents: strictly, to the end, and without ever throwing. A document is taken whole or refused with all
 * that is wrong with it. Units are converted to those that the records name. Safe for use by several threads.
 */
public final class PileReader {

    /** The largest document that is read, in bytes: 1 MiB. */
    public static final int LARGEST = 1 << 20;

    /** How many problems of one document are told. */
    public static final int MOST_PROBLEMS = 100;

    /** The version of the document, its {@code heapwright} field. */
    public static final String VERSION = "pile/1";

    /** The name of a pile whose document gives none. */
    public static final String UNNAMED = "Unnamed pile";

    private final Lexicon lexicon;
    private final NodeReader nodes = new NodeReader();

    /** @param vocabulary the ids that documents may use; read once */
    public PileReader(Vocabulary vocabulary) {
        lexicon = new Lexicon(vocabulary);
    }

    /**
     * Reads a document from a stream, which stays open.
     *
     * @param fileName what messages call the document
     * @param in UTF-8 JSON; at most {@link #LARGEST} + 1 bytes are taken from it
     * @return the pile or the problems; a stream that fails is a problem too
     */
    public ReadResult read(String fileName, InputStream in) {
        try {
            return read(fileName, in.readNBytes(LARGEST + 1));
        } catch (IOException e) {
            return refused(fileName, "a file that could not be read (" + e.getMessage() + ")", "a readable file");
        }
    }

    /**
     * Reads a document.
     *
     * @param fileName what messages call the document
     * @param document UTF-8 JSON
     * @return the pile or the problems
     */
    public ReadResult read(String fileName, byte[] document) {
        if (document.length > LARGEST) {
            return refused(fileName, "a file of more than " + LARGEST + " bytes", "a file of up to 1 MiB");
        }
        CharBuffer text = CharBuffer.allocate(document.length);
        CoderResult decoded = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(document), text, true);
        text.flip();
        if (decoded.isError()) {
            Findings findings = new Findings();
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            findings.document(new TextPosition(text.length(), line), "bytes that are not UTF-8 text", "UTF-8 text", "");
            return findings.refusal(fileName, MOST_PROBLEMS);
        }
        boolean marked = text.length() > 0 && text.charAt(0) == '\uFEFF';
        return readText(fileName, marked ? text.subSequence(1, text.length()).toString() : text.toString());
    }

    private ReadResult readText(String fileName, String text) {
        Findings findings = new Findings();
        List<Note> notes = new ArrayList<>();
        Optional<Section> root = nodes.read(text, findings).flatMap(node -> Section.of(node, Shape.PILE, findings));
        Optional<Pile> pile = root.map(section -> pile(section, findings, notes));
        if (pile.isEmpty() || findings.any()) {
            return findings.refusal(fileName, MOST_PROBLEMS);
        }
        Optional<JsonNode> caseObject =
                root.flatMap(section -> section.field("case")).map(Node::tree);
        return new ReadResult.Accepted(pile.get(), caseObject, notes);
    }

    private Pile pile(Section root, Findings findings, List<Note> notes) {
        version(root);
        root.field("case").ifPresent(node -> {
            if (!(node instanceof Node.Obj)) {
                findings.wrong(node, "an object with what the case expects", "");
            }
        });
        OwnWords own = new OwnWords(lexicon, findings);
        Map<String, Double> measures = own.measures(root);
        List<OwnMaterial> materials = own.materials(root);
        Set<String> ownIds = materials.stream().map(OwnMaterial::id).collect(Collectors.toSet());
        Timeline timeline = Timeline.of(root, notes);
        Inputs inputs = new Inputs(lexicon, ownIds, new Amounts(lexicon, measures), timeline, notes);
        return new Pile(
                root.words("name", Words.NAME).orElse(UNNAMED),
                timeline.built(),
                timeline.assumed(),
                root.flag("builtAbout") && root.field("built").isPresent(),
                timeline.asOf(),
                root.section("place", Shape.PLACE).map(PlaceReader::place).orElseGet(Place::unknown),
                root.section("container", Shape.CONTAINER)
                        .map(PlaceReader::container)
                        .orElseGet(Container::unknown),
                inputs.ingredients(root, "recipe", Lists.RECIPE, timeline.built()),
                new LogReader(lexicon, inputs, timeline).log(root, "log"),
                new LogReader(lexicon, inputs.at(timeline.loose()), timeline.loose()).log(root, "struck"),
                new AdvisedReader(lexicon, timeline).advised(root),
                root.section("keeper", Shape.KEEPER).map(Keeper::of).orElseGet(Keeper::unknown),
                root.section("aim", Shape.AIM)
                        .map(section -> PlaceReader.aim(section, timeline))
                        .orElseGet(Aim::unknown),
                inputs.stocks(root, "atHand"),
                measures,
                materials,
                own.limits(root));
    }

    private static void version(Section root) {
        String quoted = Shown.quoted(VERSION);
        root.needed("heapwright", quoted + ", the version of the document", quoted)
                .ifPresent(node -> {
                    if (!(node instanceof Node.Str text && text.value().equals(VERSION))) {
                        root.findings().wrong(node, quoted + ", the version of the document", quoted);
                    }
                });
    }

    private static ReadResult refused(String fileName, String found, String allowed) {
        Findings findings = new Findings();
        findings.document(TextPosition.START, found, allowed, "");
        return findings.refusal(fileName, MOST_PROBLEMS);
    }
}
