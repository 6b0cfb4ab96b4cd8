package heapwright.journal;

import heapwright.pile.Entry;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.TestVocabulary;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;

/** Piles and journals to test with. */
final class Samples {

    static final LocalDate DAY = LocalDate.of(2026, 11, 21);
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T14:05:09Z"), ZoneOffset.UTC);

    private Samples() {}

    static Journal journal(Path folder) {
        return new Journal(folder, new TestVocabulary(), CLOCK);
    }

    static Journal journal(Path folder, FileOps ops) {
        return new Journal(folder, new TestVocabulary(), CLOCK, ops, Duration.ofSeconds(10));
    }

    static Pile pile(String name) {
        String document = """
                {"heapwright": "pile/1", "name": "n", "built": "2026-10-31", "asOf": "2026-11-21",
                 "recipe": [{"material": "leaves-mixed", "amount": 12, "unit": "bucket"}],
                 "log": [{"date": "2026-11-10", "seen": ["soggy"]}]}
                """;
        byte[] bytes = document.getBytes(StandardCharsets.UTF_8);
        Pile pile = new PileReader(new TestVocabulary())
                .read("sample", bytes)
                .pile()
                .orElseThrow();
        return Noting.renamed(pile, name);
    }

    static Entry entry(LocalDate day, String note) {
        return new Entry(day, List.of(), List.of(), Measured.nothing(), List.of(), List.of(), note);
    }

    static Pile noted(Pile pile, String note) {
        return Noting.noted(pile, entry(DAY, note));
    }

    static List<String> notes(Pile pile) {
        return pile.log().stream()
                .map(Entry::note)
                .filter(note -> !note.isEmpty())
                .toList();
    }

    static Stored saved(Saving saving) {
        if (saving instanceof Saving.Saved saved) {
            return saved.stored();
        }
        throw new AssertionError("not saved: " + saving);
    }

    static Saving.Conflict conflict(Saving saving) {
        if (saving instanceof Saving.Conflict conflict) {
            return conflict;
        }
        throw new AssertionError("no conflict: " + saving);
    }

    static Stored stored(Journal journal, String id) throws java.io.IOException {
        JournalFile shelf = journal.open(id).orElseThrow(() -> new AssertionError("no file " + id));
        if (shelf instanceof Stored stored) {
            return stored;
        }
        throw new AssertionError("broken: " + shelf);
    }
}
