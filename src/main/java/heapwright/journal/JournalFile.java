package heapwright.journal;

/** One file of the journal: a pile, or a file that cannot be read as one. */
public sealed interface JournalFile permits Stored, Broken {

    /** Names the file within the journal and lasts as long as the file does; may hold any character, so escape it. */
    String id();

    /** What to call it to a person: the name of the pile, or of the file if it cannot be read. */
    String name();
}
