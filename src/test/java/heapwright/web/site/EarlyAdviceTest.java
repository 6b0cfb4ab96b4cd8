package heapwright.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advisor;
import heapwright.journal.Journal;
import heapwright.journal.Noting;
import heapwright.knowledge.KnowledgeReader;
import heapwright.load.PileFiles;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.report.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Advice before anybody asks")
class EarlyAdviceTest {

    private static final Advisor ADVISOR = Advisor.packed(KnowledgeReader.packed());
    private static final PileReader READER = new PileReader(ADVISOR.knowledge().vocabulary());

    @TempDir
    private Path folder;

    private Site site() {
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
        Journal journal = new Journal(folder, ADVISOR.knowledge().vocabulary(), clock);
        return Site.of(ADVISOR, journal, Catalogue.english(), clock, "test");
    }

    private Pile write(int number) throws IOException {
        byte[] bytes =
                PileFiles.document("Heap " + number, 2, number).toString().getBytes();
        Files.write(folder.resolve("heap-%03d.json".formatted(number)), bytes);
        return READER.read("heap", bytes).pile().orElseThrow();
    }

    private boolean kept(Site site, Pile pile) {
        return site.desk().kept(Noting.advisedOn(pile, site.today()));
    }

    @Test
    @DisplayName("has the piles of the folder at hand, whatever else lies there")
    void atHand() throws IOException {
        Pile one = write(1);
        Files.writeString(folder.resolve("broken.json"), "{");
        Pile two = write(2);
        Site site = site();
        new EarlyAdvice(site).run();
        assertTrue(kept(site, one) && kept(site, two));
    }

    @Test
    @DisplayName("asks nothing of a folder that is not there")
    void noFolder() throws IOException {
        Site site = site();
        Files.delete(folder);
        new EarlyAdvice(site).run();
        assertEquals(List.of(), site.journal().list());
    }

    @Test
    @DisplayName("stops at a number of piles")
    void most() throws IOException {
        int all = EarlyAdvice.MOST + 3;
        Site site = site();
        Pile[] piles = new Pile[all];
        for (int i = 0; i < all; i++) {
            piles[i] = write(i);
        }
        new EarlyAdvice(site).run();
        assertEquals(
                EarlyAdvice.MOST,
                IntStream.range(0, all).filter(i -> kept(site, piles[i])).count());
    }
}
