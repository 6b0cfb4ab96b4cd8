package heapwright.journal;

import heapwright.pile.Note;
import heapwright.pile.Pile;
import java.util.List;

/**
 * A pile as it stands in its file.
 *
 * @param id names the file within the journal
 * @param version stands for the exact content of the file: the SHA-256 of its bytes, 64 hexadecimal digits
 * @param pile the pile
 * @param notes what the reader took for granted
 */
public record Stored(String id, String version, Pile pile, List<Note> notes) implements JournalFile {
    public Stored {
        notes = List.copyOf(notes);
    }

    @Override
    public String name() {
        return pile.name();
    }
}
