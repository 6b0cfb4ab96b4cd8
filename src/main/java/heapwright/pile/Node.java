package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands, so that every problem can name its place and line. */
sealed interface Node {

    ValuePath at();

    TextPosition spot();

    /** The value as a message quotes it: short, on one line, with nothing that could upset a terminal. */
    String shown();

    /** The value without its place. */
    JsonNode tree();

    record Obj(ValuePath at, TextPosition spot, Map<String, Node> fields) implements Node {
        @Override
        public String shown() {
            return "an object { … }";
        }

        @Override
        public JsonNode tree() {
            ObjectNode tree = JsonNodeFactory.instance.objectNode();
            fields.forEach((name, value) -> tree.set(name, value.tree()));
            return tree;
        }
    }

    record Arr(ValuePath at, TextPosition spot, List<Node> items) implements Node {
        @Override
        public String shown() {
            return "a list [ … ]";
        }

        @Override
        public JsonNode tree() {
            ArrayNode tree = JsonNodeFactory.instance.arrayNode();
            items.forEach(item -> tree.add(item.tree()));
            return tree;
        }
    }

    record Str(ValuePath at, TextPosition spot, String value) implements Node {
        @Override
        public String shown() {
            return Shown.quoted(value);
        }

        @Override
        public JsonNode tree() {
            return JsonNodeFactory.instance.textNode(value);
        }
    }

    record Num(ValuePath at, TextPosition spot, double value, String text) implements Node {
        @Override
        public String shown() {
            return Shown.plain(text);
        }

        @Override
        public JsonNode tree() {
            if (text.chars().anyMatch(c -> c == '.' || c == 'e' || c == 'E')) {
                return JsonNodeFactory.instance.numberNode(value);
            }
            BigInteger whole = new BigInteger(text);
            return whole.bitLength() < Integer.SIZE
                    ? JsonNodeFactory.instance.numberNode(whole.intValue())
                    : whole.bitLength() < Long.SIZE
                            ? JsonNodeFactory.instance.numberNode(whole.longValue())
                            : JsonNodeFactory.instance.numberNode(whole);
        }
    }

    record Bool(ValuePath at, TextPosition spot, boolean value) implements Node {
        @Override
        public String shown() {
            return Boolean.toString(value);
        }

        @Override
        public JsonNode tree() {
            return JsonNodeFactory.instance.booleanNode(value);
        }
    }

    record Nul(ValuePath at, TextPosition spot) implements Node {
        @Override
        public String shown() {
            return "null (what is not known is left out)";
        }

        @Override
        public JsonNode tree() {
            return JsonNodeFactory.instance.nullNode();
        }
    }
}
