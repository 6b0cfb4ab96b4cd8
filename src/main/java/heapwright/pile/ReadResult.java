package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;

/** What came of reading a document: a pile, or all that is wrong with it. */
public sealed interface ReadResult {

    /** The pile, if the document was sound. */
    Optional<Pile> pile();

    /** What is wrong, in the order of the document; empty if it was sound. */
    List<Problem> problems();

    /**
     * A sound document.
     *
     * @param value the pile
     * @param caseObject the document's {@code case} object as it stands, if it has one
     * @param notes what was taken for granted
     */
    record Accepted(Pile value, Optional<JsonNode> caseObject, List<Note> notes) implements ReadResult {
        public Accepted {
            notes = List.copyOf(notes);
        }

        @Override
        public Optional<Pile> pile() {
            return Optional.of(value);
        }

        @Override
        public List<Problem> problems() {
            return List.of();
        }
    }

    /**
     * A refused document.
     *
     * @param problems at least one and at most {@link PileReader#MOST_PROBLEMS}, in the order of the document
     * @param further how many more there are
     */
    record Refused(List<Problem> problems, int further) implements ReadResult {
        public Refused {
            problems = List.copyOf(problems);
        }

        @Override
        public Optional<Pile> pile() {
            return Optional.empty();
        }
    }
}
