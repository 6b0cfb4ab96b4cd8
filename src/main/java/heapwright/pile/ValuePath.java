package heapwright.pile;

import java.util.ArrayDeque;
import java.util.Deque;

/** The way from the root of a document to a value; written out as an RFC 6901 JSON Pointer only when asked. */
record ValuePath(ValuePath parent, String step) {

    static final ValuePath ROOT = new ValuePath(null, "");

    ValuePath then(String name) {
        return new ValuePath(this, name);
    }

    ValuePath then(int index) {
        return new ValuePath(this, Integer.toString(index));
    }

    String pointer() {
        Deque<String> steps = new ArrayDeque<>();
        for (ValuePath at = this; at.parent != null; at = at.parent) {
            steps.push(at.step.replace("~", "~0").replace("/", "~1"));
        }
        StringBuilder pointer = new StringBuilder();
        steps.forEach(each -> pointer.append('/').append(each));
        return pointer.toString();
    }
}
