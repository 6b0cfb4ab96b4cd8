package heapwright.pile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads JSON text into {@link Node}s. Broken JSON ends the reading; fields given twice and numbers that are not finite
 * are noted and the reading goes on, so that a person hears of everything at once.
 */
final class NodeReader {

    /** A pile document needs six levels, a case in it a few more. */
    static final int DEEPEST = 32;

    private static final int LONGEST_NAME = 500;
    private static final int LONGEST_NUMBER = 100;

    private final JsonFactory factory = JsonFactory.builder()
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNameLength(LONGEST_NAME)
                    .maxNumberLength(LONGEST_NUMBER)
                    .build())
            .build();

    /** The root value, or nothing if the text is not JSON; then the reason is among the findings. */
    Optional<Node> read(String text, Findings findings) {
        try (JsonParser parser = factory.createParser(text)) {
            try {
                if (parser.nextToken() == null) {
                    findings.document(TextPosition.START, "an empty file", "a pile document", Shape.PILE.example());
                    return Optional.empty();
                }
                Node root = value(parser, ValuePath.ROOT, findings);
                if (parser.nextToken() != null) {
                    findings.document(spot(parser), "more after the end of the document", "one JSON object", "");
                }
                return Optional.of(root);
            } catch (StreamConstraintsException e) {
                tooMuch(parser, findings);
            } catch (JsonProcessingException e) {
                BrokenJson.report(text, e, findings);
            }
        } catch (IOException e) {
            findings.document(TextPosition.START, "text that cannot be read", "JSON", "");
        }
        return Optional.empty();
    }

    private Node value(JsonParser parser, ValuePath at, Findings findings) throws IOException {
        TextPosition spot = spot(parser);
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(parser, at, spot, findings);
            case START_ARRAY -> array(parser, at, spot, findings);
            case VALUE_STRING -> new Node.Str(at, spot, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser, at, spot, findings);
            case VALUE_TRUE -> new Node.Bool(at, spot, true);
            case VALUE_FALSE -> new Node.Bool(at, spot, false);
            default -> new Node.Nul(at, spot);
        };
    }

    private Node object(JsonParser parser, ValuePath at, TextPosition spot, Findings findings) throws IOException {
        Map<String, Node> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            TextPosition nameSpot = spot(parser);
            parser.nextToken();
            Node value = value(parser, at.then(name), findings);
            Node first = fields.putIfAbsent(name, value);
            if (first != null) {
                String found = Shown.quoted(name) + " a second time (the first is on line "
                        + first.spot().line() + ")";
                findings.at(value.at(), nameSpot, found, "each field once", "", Optional::empty);
            }
        }
        return new Node.Obj(at, spot, fields);
    }

    private Node array(JsonParser parser, ValuePath at, TextPosition spot, Findings findings) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(parser, at.then(items.size()), findings));
        }
        return new Node.Arr(at, spot, items);
    }

    private static Node number(JsonParser parser, ValuePath at, TextPosition spot, Findings findings)
            throws IOException {
        double value = parser.getDoubleValue();
        Node.Num number = new Node.Num(at, spot, value == 0 ? 0 : value, parser.getText());
        if (!Double.isFinite(value)) {
            findings.wrong(number, "a number a computer can hold", "12.5");
        }
        return number;
    }

    private static void tooMuch(JsonParser parser, Findings findings) {
        JsonLocation where = parser.currentLocation();
        TextPosition spot = new TextPosition(where.getCharOffset(), where.getLineNr());
        boolean deep = parser.getParsingContext().getNestingDepth() >= DEEPEST;
        findings.document(
                spot,
                deep ? "objects and lists nested too deeply" : "a name or a number that is too long",
                deep
                        ? "at most " + DEEPEST + " levels"
                        : "names of up to " + LONGEST_NAME + " and numbers of up to " + LONGEST_NUMBER + " characters",
                "");
    }

    private static TextPosition spot(JsonParser parser) {
        JsonLocation where = parser.currentTokenLocation();
        return new TextPosition(where.getCharOffset(), where.getLineNr());
    }
}
