package heapwright.knowledge;

import java.util.List;

/** What a row of evidence reads: exactly one thing, or one of several of a kind. */
public sealed interface When {

    /** The person found any of these signs. */
    record Seen(List<Sign> anyOf) implements When {
        public Seen {
            anyOf = List.copyOf(anyOf);
        }
    }

    /** The person looked for any of these signs and did not find it. */
    record Denied(List<Sign> anyOf) implements When {
        public Denied {
            anyOf = List.copyOf(anyOf);
        }
    }

    /** A named condition holds. */
    record Holds(Condition condition) implements When {}

    /** A named condition does not hold. */
    record HoldsNot(Condition condition) implements When {}

    /**
     * A quantity stands on a side of a limit.
     *
     * @param measured whether it must have been measured on this pile; an estimate does not count then
     */
    record Placed(Reading reading, Side side, Limit limit, boolean measured) implements When {}

    /** The process model says so. */
    record ModelSays(ModelFinding finding) implements When {}

    /** Stuff with any of these traits went in, whenever and however much. */
    record WentIn(List<Trait> anyOf) implements When {
        public WentIn {
            anyOf = List.copyOf(anyOf);
        }
    }

    /** Any of these steps was taken on and helped, and nothing was seen since of what it mends. */
    record Helped(List<Remedy> anyOf) implements When {
        public Helped {
            anyOf = List.copyOf(anyOf);
        }
    }

    /** Any of these steps was taken on, done, and did not help. */
    record Failed(List<Remedy> anyOf) implements When {
        public Failed {
            anyOf = List.copyOf(anyOf);
        }
    }

    /** Stuff of this class, which stays out of a home pile, went in. */
    record KeptOut(KeepOutClass kind) implements When {}
}
