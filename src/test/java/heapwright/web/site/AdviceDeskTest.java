package heapwright.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.knowledge.KnowledgeReader;
import heapwright.load.PileFiles;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The desk")
class AdviceDeskTest {

    private static final Advisor ADVISOR = Advisor.packed(KnowledgeReader.packed());
    private static final PileReader READER = new PileReader(ADVISOR.knowledge().vocabulary());

    private final AdviceDesk desk = new AdviceDesk(ADVISOR, 10 << 20);

    private static Pile pile(int readings, long seed) throws IOException {
        byte[] bytes = PileFiles.document("Heap", readings, seed).toString().getBytes();
        return READER.read("heap", bytes).pile().orElseThrow();
    }

    @Test
    @DisplayName("works a pile out once, however often its file is read")
    void once() throws IOException {
        assertSame(desk.advise(pile(20, 1)), desk.advise(pile(20, 1)));
    }

    @Test
    @DisplayName("works it out anew when a reading, the day or a figure of the person's own is another")
    void anew() throws IOException {
        Pile pile = pile(20, 1);
        Advice before = desk.advise(pile);
        Pile read = pile(20, 2);
        Pile later = pile.with(pile.name(), pile.asOf().plusDays(1), pile.recipe(), pile.log());
        for (Pile other : List.of(read, later)) {
            assertNotSame(before, desk.advise(other));
            assertEquals(other.asOf(), desk.advise(other).pile().asOf());
            assertEquals(other.log(), desk.advise(other).pile().log());
        }
        assertSame(before, desk.advise(pile));
    }

    @Test
    @DisplayName("says of a pile what the advisor says of it")
    void sameAdvice() throws IOException {
        Pile pile = pile(5, 3);
        desk.advise(pile);
        assertEquals(ADVISOR.advise(pile).findings(), desk.advise(pile).findings());
    }

    @Test
    @DisplayName("lets two who ask the same at once wait for one answer")
    void together() throws IOException {
        Pile pile = pile(20, 4);
        List<CompletableFuture<Advice>> asked = IntStream.range(0, 4)
                .mapToObj(i -> CompletableFuture.supplyAsync(() -> desk.advise(pile)))
                .toList();
        List<Advice> answers = asked.stream().map(CompletableFuture::join).toList();
        answers.forEach(a -> assertSame(answers.get(0), a));
    }

    @Test
    @DisplayName("keeps no more than it has room for")
    void bounded() throws IOException {
        Pile pile = pile(5, 1);
        AdviceDesk small = new AdviceDesk(ADVISOR, AdviceWeight.bytes(pile));
        Advice before = small.advise(pile);
        assertSame(before, small.advise(pile));
        IntStream.range(2, 6).forEach(seed -> small.advise(quietly(seed)));
        int kept = (int) IntStream.range(1, 6)
                .mapToObj(AdviceDeskTest::quietly)
                .filter(p -> small.kept(p))
                .count();
        assertEquals(1, kept);
    }

    private static Pile quietly(int seed) {
        try {
            return pile(5, seed);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
