package heapwright.journal;

import heapwright.pile.Problem;
import java.util.List;

/**
 * A file that cannot be read as a pile. The journal shows it and can put it aside, and never writes over it.
 *
 * @param id names the file within the journal
 * @param name the name of the file
 * @param problems what is wrong with it, at least one
 * @param further how many more problems there are
 */
public record Broken(String id, String name, List<Problem> problems, int further) implements JournalFile {
    public Broken {
        problems = List.copyOf(problems);
    }
}
