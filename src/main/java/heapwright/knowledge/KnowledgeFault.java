package heapwright.knowledge;

import java.util.List;

/** The tables of the knowledge base do not hang together; the message lists every fault found, a line each. */
public final class KnowledgeFault extends RuntimeException {

    private final transient List<String> faults;

    public KnowledgeFault(List<String> faults) {
        super("The knowledge tables have " + faults.size() + " fault(s):\n  " + String.join("\n  ", faults));
        this.faults = List.copyOf(faults);
    }

    /** Every fault, a line each. */
    public List<String> faults() {
        return faults;
    }
}
