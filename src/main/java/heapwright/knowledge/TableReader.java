package heapwright.knowledge;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads the text of one table: an object with one list of rows under the name of the table. Made of the streaming
 * parser alone: to bind records by reflection takes longer than all other reading of the knowledge base.
 */
final class TableReader {

    private final JsonFactory factory = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    /**
     * The rows in order.
     *
     * @param file the file's name, for messages
     * @param name the table's name
     * @throws RowFault when the text is no such table
     * @throws IOException when it cannot be read
     */
    List<Row> rows(String file, String name, InputStream in) throws IOException {
        try (JsonParser parser = factory.createParser(in)) {
            parser.nextToken();
            Object root = value(parser, file, "");
            if (parser.nextToken() != null) {
                throw new RowFault(file + ", line " + line(parser) + ": found more after the end of the table");
            }
            if (root instanceof Row table) {
                return table.as(t -> rows(t, name));
            }
            throw new RowFault(file + ": found no object. Example: {\"" + name + "\": [ … ]}");
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
            throw new RowFault(file + ", line " + line + ": " + e.getOriginalMessage());
        }
    }

    private static List<Row> rows(Row table, String name) {
        List<Row> rows = new ArrayList<>();
        for (Object row : table.items(name)) {
            if (!(row instanceof Row object)) {
                throw table.fault(name, "something else than an object in the list", "objects", "");
            }
            rows.add(object);
        }
        return rows;
    }

    /** The value at the parser's token; null stands for a JSON null. */
    private static Object value(JsonParser parser, String file, String pointer) throws IOException {
        JsonToken token = parser.currentToken();
        return switch (token == null ? JsonToken.NOT_AVAILABLE : token) {
            case START_OBJECT -> row(parser, file, pointer);
            case START_ARRAY -> list(parser, file, pointer);
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            default -> null;
        };
    }

    private static Row row(JsonParser parser, String file, String pointer) throws IOException {
        Row.Place place = new Row.Place(file, line(parser), pointer);
        Map<String, Object> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            Object value = value(parser, file, pointer + "/" + name);
            if (value != null) {
                fields.put(name, value);
            }
        }
        return new Row(place, fields);
    }

    private static List<Object> list(JsonParser parser, String file, String pointer) throws IOException {
        List<Object> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(parser, file, pointer + "/" + items.size()));
        }
        return items;
    }

    private static int line(JsonParser parser) {
        return parser.currentTokenLocation().getLineNr();
    }
}
