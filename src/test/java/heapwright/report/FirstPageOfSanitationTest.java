package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import heapwright.process.sanitation.HeatLedger;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@DisplayName("The first page of the heat ledger")
@Tag("thorough")
class FirstPageOfSanitationTest {

    private static final List<String> FOLDERS = List.of("demo", "practice", "published", "winter");

    @Test
    @DisplayName("keeps to 45 lines and 250 words, in either units, and says that it speaks of the core alone")
    void size() {
        Casebook casebook = new Casebook(TestPile.KNOWLEDGE);
        List<Case> all = new ArrayList<>();
        FOLDERS.forEach(f -> all.addAll(casebook.below(Path.of("cases", f))));
        assertTrue(all.size() > 100);
        for (Units units : Units.values()) {
            Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), units);
            FirstPageOfSanitation page = new FirstPageOfSanitation(words, false);
            for (Case one : all) {
                HeatLedger ledger = HeatLedger.of(one.pile(), words.knowledge());
                String written = page.write(one.pile(), ledger);
                assertTrue(FirstPageSize.fits(written), () -> one.file() + "\n" + written);
                assertTrue(!ledger.record().measured() || written.contains("edges were not measured"), one.file());
            }
        }
    }

    @Test
    @DisplayName("never says that a pile is clean, safe, free of something or certified")
    void noComfort() {
        Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
        for (Case one : new Casebook(TestPile.KNOWLEDGE).below(Path.of("cases", "practice", "heat"))) {
            HeatLedger ledger = HeatLedger.of(one.pile(), TestPile.KNOWLEDGE);
            for (String written : List.of(
                    new FirstPageOfSanitation(words, false).write(one.pile(), ledger),
                    new SanitationReport(words, false).write(one.pile(), ledger))) {
                for (String comfort : List.of("is clean", "is safe", "is free", "passes", "is sanitised")) {
                    assertFalse(written.contains(comfort), one.file() + ": " + comfort);
                }
            }
        }
    }
}
