package heapwright.pile;

import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands, so that every problem can name its place and line. */
sealed interface Node {

    At at();

    Spot spot();

    /** The value as a message quotes it: short, on one line, with nothing that could upset a terminal. */
    String shown();

    record Obj(At at, Spot spot, Map<String, Node> fields) implements Node {
        @Override
        public String shown() {
            return "an object { … }";
        }
    }

    record Arr(At at, Spot spot, List<Node> items) implements Node {
        @Override
        public String shown() {
            return "a list [ … ]";
        }
    }

    record Str(At at, Spot spot, String value) implements Node {
        @Override
        public String shown() {
            return Shown.quoted(value);
        }
    }

    record Num(At at, Spot spot, double value, String text) implements Node {
        @Override
        public String shown() {
            return Shown.plain(text);
        }
    }

    record Bool(At at, Spot spot, boolean value) implements Node {
        @Override
        public String shown() {
            return Boolean.toString(value);
        }
    }

    record Nul(At at, Spot spot) implements Node {
        @Override
        public String shown() {
            return "null (what is not known is left out)";
        }
    }
}
