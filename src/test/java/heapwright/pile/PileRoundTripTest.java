package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.Seed;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class PileRoundTripTest {

    private final PileReader reader = new PileReader(new TestVocabulary());
    private final PileWriter writer = new PileWriter();

    @Provide
    Arbitrary<Pile> piles() {
        return PileArbitraries.piles();
    }

    @Provide
    Arbitrary<String> documents() {
        return PileArbitraries.documents();
    }

    @Property(tries = 500, seed = Seed.FIXED)
    void whatIsWrittenReadsBackTheSame(@ForAll("piles") Pile pile) {
        ReadResult result = reader.read("pile.json", writer.bytes(pile));
        assertEquals(List.of(), result.problems());
        assertEquals(pile, result.pile().orElseThrow());
    }

    @Property(tries = 300, seed = Seed.FIXED)
    void everyVariedDocumentIsReadAndWrittenTheSameTwice(@ForAll("documents") String document) {
        ReadResult result = reader.read("pile.json", document.getBytes(StandardCharsets.UTF_8));
        assertEquals(List.of(), result.problems());
        String once = writer.write(result.pile().orElseThrow());
        ReadResult again = reader.read("pile.json", once.getBytes(StandardCharsets.UTF_8));
        assertEquals(once, writer.write(again.pile().orElseThrow()));
    }
}
