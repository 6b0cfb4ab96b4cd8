package heapwright.pile;

import java.util.ArrayDeque;
import java.util.Deque;

/** The way from the root of a document to a value; written out as an RFC 6901 JSON Pointer only when asked. */
record At(At parent, String step) {

    static final At ROOT = new At(null, "");

    At then(String name) {
        return new At(this, name);
    }

    At then(int index) {
        return new At(this, Integer.toString(index));
    }

    String pointer() {
        Deque<String> steps = new ArrayDeque<>();
        for (At at = this; at.parent != null; at = at.parent) {
            steps.push(at.step.replace("~", "~0").replace("/", "~1"));
        }
        StringBuilder pointer = new StringBuilder();
        steps.forEach(each -> pointer.append('/').append(each));
        return pointer.toString();
    }
}
