package heapwright.knowledge;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import heapwright.pile.BrokenJson;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the text of one table: an object with one list of rows under the name of the table. Made of the streaming
 * parser alone: to bind records by reflection takes longer than all other reading of the knowledge base.
 */
final class TableReader {

    /** What stands in decoded text for bytes that are no letter. */
    private static final char NO_LETTER = '\uFFFD';

    private static final String TABLE = "an object with one list of rows";
    private static final Pattern TWICE = Pattern.compile("Duplicate field '([^']*)'");

    private final JsonFactory factory = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    /**
     * The rows in order.
     *
     * @param file the file's name, for messages
     * @param name the table's name
     * @param faults takes what does not fit in a row, a line each
     * @throws RowFault when the text is no such table
     * @throws IOException when it cannot be read
     */
    List<Row> rows(String file, String name, InputStream in, List<String> faults) throws IOException {
        byte[] bytes = in.readAllBytes();
        try (JsonParser parser = factory.createParser(bytes)) {
            parser.nextToken();
            Object root = new Reading(parser, file, faults).value("");
            if (parser.nextToken() != null) {
                throw new RowFault(file + ", line " + line(parser) + ": found more after the end of the table");
            }
            if (root instanceof Row table) {
                return rows(table, name, faults);
            }
            throw new RowFault(file + ": found no object. Example: {\"" + name + "\": [ … ]}");
        } catch (JsonProcessingException e) {
            throw new RowFault(file + ", line " + told(bytes, e));
        }
    }

    /** The line at which the text is no table any more, with what is wrong there. */
    private String told(byte[] bytes, JsonProcessingException failure) {
        int line = failure.getLocation() == null
                ? 1
                : Math.max(1, failure.getLocation().getLineNr());
        if (failure instanceof StreamConstraintsException) {
            return line + ": found something longer or deeper than any table is. Allowed: " + TABLE + ".";
        }
        Matcher twice = TWICE.matcher(failure.getOriginalMessage());
        if (twice.find()) {
            return line + ": found the field \"" + twice.group(1) + "\" twice in one object. Allowed: each field once.";
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        if (text.indexOf(NO_LETTER) >= 0) {
            return line + ": found bytes that are no letters of UTF-8. Allowed: text saved as UTF-8.";
        }
        // Read again as letters: a reader of bytes cannot tell at which letter it gave up.
        try (JsonParser letters = factory.createParser(text)) {
            while (letters.nextToken() != null) {
                // On to the break.
            }
        } catch (JsonProcessingException again) {
            BrokenJson.Break at = BrokenJson.in(text, again);
            return at.line() + ": found " + at.found() + ". Allowed: " + at.allowed() + ".";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return line + ": found text that is no JSON. Allowed: " + TABLE + ".";
    }

    private static List<Row> rows(Row table, String name, List<String> faults) {
        int before = faults.size();
        List<?> items = table.as(t -> t.items(name));
        if (faults.size() > before) {
            // Of a table that is not one nothing else is told.
            String first = faults.get(before);
            faults.subList(before, faults.size()).clear();
            throw new RowFault(first);
        }
        List<Row> rows = new ArrayList<>();
        for (Object item : items) {
            if (item instanceof Row row) {
                rows.add(row);
            } else {
                faults.add(table.fault(name, "something else than an object in the list", "objects", "")
                        .getMessage());
            }
        }
        return rows;
    }

    /** One reading of one file. */
    private record Reading(JsonParser parser, String file, List<String> faults) {

        /** The value at the parser's token; null stands for a JSON null. */
        Object value(String pointer) throws IOException {
            JsonToken token = parser.currentToken();
            return switch (token == null ? JsonToken.NOT_AVAILABLE : token) {
                case START_OBJECT -> row(pointer);
                case START_ARRAY -> list(pointer);
                case VALUE_STRING -> parser.getText();
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
                case VALUE_TRUE -> true;
                case VALUE_FALSE -> false;
                default -> null;
            };
        }

        private Row row(String pointer) throws IOException {
            Row.Place place = new Row.Place(file, line(parser), pointer);
            Map<String, Object> fields = new LinkedHashMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String name = parser.currentName();
                parser.nextToken();
                Object value = value(pointer + "/" + name);
                if (value != null) {
                    fields.put(name, value);
                }
            }
            return new Row(place, fields, faults);
        }

        private List<Object> list(String pointer) throws IOException {
            List<Object> items = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(value(pointer + "/" + items.size()));
            }
            return items;
        }
    }

    private static int line(JsonParser parser) {
        return parser.currentTokenLocation().getLineNr();
    }
}
