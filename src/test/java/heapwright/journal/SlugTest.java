package heapwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.Seed;
import heapwright.pile.Pile;
import heapwright.pile.PileArbitraries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlugTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Heap by the birches | heap-by-the-birches",
                "  Grandma's --  heap!! | grandmas-heap",
                "Mökin kömpösti | mokin-komposti",
                "Smørrebrød & Straße | smorrebrod-strasse",
                "ﬁrst Ｈｅａｐ ② | first-heap-2",
                "İstanbul ıı | istanbul-ii",
                "堆肥 | pile",
                "Компост 3 | 3",
                "... | pile",
                "../../etc/passwd | etc-passwd",
                "CON | pile-con",
                "aux. | pile-aux",
                "LPT¹ | pile-lpt1",
                "com0 | pile-com0",
                "com10 | com10",
                "console | console"
            })
    void slugs(String name, String slug) {
        assertEquals(slug, Slug.of(name));
    }

    @Provide
    Arbitrary<String> names() {
        Arbitrary<String> near =
                Arbitraries.of("con", "COM", "lpt", "nul", "1", "²", "-", ".", "..", "/", "\\", " ", "é");
        return Arbitraries.oneOf(
                Arbitraries.strings().ofMaxLength(200),
                Arbitraries.strings().ascii().ofMaxLength(200),
                near.list().ofMaxSize(80).map(parts -> String.join("", parts)));
    }

    @Property(tries = 2000, seed = Seed.FIXED)
    void aSlugIsAPlainFileNameOnAnySystem(@ForAll("names") String name) {
        String slug = Slug.of(name);
        assertTrue(slug.matches("[a-z0-9]+(-[a-z0-9]+)*"), slug);
        assertTrue(slug.length() <= Slug.LONGEST, slug);
        assertFalse(slug.matches("con|prn|aux|nul|(com|lpt)[0-9]"), slug);
        assertEquals(slug, Slug.of(slug));
    }

    @Property(tries = 200, seed = Seed.FIXED)
    void aSlugDoesNotDependOnTheLanguageOfTheSystem(@ForAll("names") String name) {
        Locale usual = Locale.getDefault();
        String slug = Slug.of(name);
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertEquals(slug, Slug.of(name));
        } finally {
            Locale.setDefault(usual);
        }
    }

    @Property(tries = 300, seed = Seed.FIXED)
    void aFreeSlugIsFree(@ForAll("names") String name, @ForAll List<Boolean> used) {
        Set<String> taken = new HashSet<>();
        for (int i = 0; i < used.size() + 1; i++) {
            String free = Slug.free(Slug.of(name), taken::contains);
            assertTrue(taken.add(free), free);
            assertEquals(free.length() <= Slug.LONGEST, free.equals(Slug.of(free)), free);
        }
    }

    @Provide
    Arbitrary<Pile> piles() {
        return PileArbitraries.piles();
    }

    @Property(tries = 60, seed = Seed.FIXED)
    void anyPileIsCreatedOpenedSavedDeletedAndFetchedBack(@ForAll("piles") Pile pile) throws IOException {
        Path folder = Files.createTempDirectory("journal");
        try {
            Journal journal = Samples.journal(folder);
            Stored first = Samples.saved(journal.create(pile));
            assertEquals(pile, Samples.stored(journal, first.id()).pile());
            Pile noted = Noting.noted(pile, Samples.entry(pile.asOf(), "noted"));
            Stored second = Samples.saved(journal.save(first.id(), first.version(), noted));
            assertEquals(noted, Samples.stored(journal, first.id()).pile());
            assertEquals(List.of(Listed.of(second)), journal.list());
            Samples.conflict(journal.save(first.id(), first.version(), pile));
            assertEquals(first.id(), journal.delete(first.id()).orElseThrow());
            assertEquals(first.id(), journal.undoDelete(first.id()).orElseThrow());
            assertEquals(second, Samples.stored(journal, first.id()));
        } finally {
            try (Stream<Path> paths = Files.walk(folder)) {
                for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
