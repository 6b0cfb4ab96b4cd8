package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Iterator;
import java.util.Map;

/** Prints JSON for people who edit it by hand: what fits on a line stands on a line, the rest is indented by two. */
final class Pretty {

    private static final int WIDTH = 110;

    private Pretty() {}

    static String print(JsonNode node) {
        StringBuilder out = new StringBuilder();
        print(node, 0, 0, out);
        return out.toString();
    }

    private static void print(JsonNode node, int indent, int column, StringBuilder out) {
        if (!node.isContainerNode() || node.isEmpty()) {
            out.append(node);
            return;
        }
        if (depth(node) <= 2 && indent > 0) {
            StringBuilder line = new StringBuilder();
            inline(node, line);
            if (column + line.length() <= WIDTH) {
                out.append(line);
                return;
            }
        }
        if (node.isObject()) {
            out.append("{\n");
            Iterator<Map.Entry<String, JsonNode>> fields = node.properties().iterator();
            while (fields.hasNext()) {
                Map.Entry<String, JsonNode> field = fields.next();
                String name = name(field.getKey());
                out.append(" ".repeat(indent + 2)).append(name);
                print(field.getValue(), indent + 2, indent + 2 + name.length(), out);
                out.append(fields.hasNext() ? ",\n" : "\n");
            }
            out.append(" ".repeat(indent)).append('}');
        } else {
            out.append("[\n");
            for (int i = 0; i < node.size(); i++) {
                out.append(" ".repeat(indent + 2));
                print(node.get(i), indent + 2, indent + 2, out);
                out.append(i + 1 < node.size() ? ",\n" : "\n");
            }
            out.append(" ".repeat(indent)).append(']');
        }
    }

    private static void inline(JsonNode node, StringBuilder out) {
        if (!node.isContainerNode()) {
            out.append(node);
        } else if (node.isObject()) {
            String separator = "{";
            for (Map.Entry<String, JsonNode> field : node.properties()) {
                out.append(separator).append(name(field.getKey()));
                inline(field.getValue(), out);
                separator = ", ";
            }
            out.append('}');
        } else {
            String separator = "[";
            for (JsonNode item : node) {
                out.append(separator);
                inline(item, out);
                separator = ", ";
            }
            out.append(']');
        }
    }

    private static String name(String field) {
        return TextNode.valueOf(field) + ": ";
    }

    private static int depth(JsonNode node) {
        int deepest = 0;
        for (JsonNode child : node) {
            deepest = Math.max(deepest, depth(child));
        }
        return node.isContainerNode() && !node.isEmpty() ? deepest + 1 : 0;
    }
}
