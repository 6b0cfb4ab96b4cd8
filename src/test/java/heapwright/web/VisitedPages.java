package heapwright.web;

import heapwright.journal.Noting;
import heapwright.knowledge.KnowledgeReader;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The addresses that tests of every page visit, and the folder of piles behind them. */
final class VisitedPages {

    private static final String WET = "y=smells-sour.soggy.core-cold&n=smells-ammonia&built=2&size=1&out=-3";

    private static final String PLAN = "/build?r=leaves~10~bucket~&r=grass~16~bucket~20&h=cardboard~~bucket~"
            + "&h=straw~2~bucket~&length=100&width=100&height=100";

    /** The first note of the example. */
    private static final String NOTE = "/piles/heap-by-the-birches/notes/" + note();

    static final List<String> ALL = List.of(
            "/",
            "/checkup",
            "/checkup?y=smells-sour.core-cold&n=soggy&core=x",
            "/checkup/blank",
            "/result?" + WET,
            "/result?y=smoke.smells-burnt&on=2026-11-25",
            "/result?y=core-hot.smells-earthy.squeeze-drops",
            "/why",
            "/why/example",
            "/build",
            "/build?r=leaves~10~bucket~&r=grass~16~bucket~20&r=urin~2~L~&h=cardboard~~bucket~",
            "/build?r=leaves~10~bucket~&r=grass~16~bucket~20&r=meat~1~bucket~&h=cardboard~~bucket~&length=100",
            "/piles",
            "/piles?removed=old-heap",
            "/piles/heap-by-the-birches",
            "/piles/heap-by-the-birches/result",
            "/piles/heap-by-the-birches/why",
            "/piles/heap-by-the-birches/ready",
            "/piles/heap-by-the-birches/season",
            "/season",
            "/piles/heap-by-the-birches/heat",
            "/piles/heap-by-the-birches/notes",
            "/piles/heap-by-the-birches/edit",
            "/open",
            NOTE,
            NOTE + "/take-back",
            "/knowledge",
            "/knowledge?q=wet",
            "/knowledge/causes",
            "/knowledge/causes/too-wet",
            "/knowledge/remedies",
            "/knowledge/remedies/add-urea",
            "/knowledge/materials",
            "/knowledge/materials/leaves-mixed",
            "/knowledge/cautions",
            "/knowledge/sources",
            "/settings",
            "/settings?saved=1",
            "/nowhere");

    /** Those that go out to the heap as one sheet. */
    static final List<String> SHEETS =
            List.of("/result?" + WET, "/piles/heap-by-the-birches/result", "/result?y=smoke", "/why/example", PLAN);

    private VisitedPages() {}

    private static String note() {
        try (InputStream in = WebServer.class.getResourceAsStream("example.json")) {
            Pile pile = new PileReader(KnowledgeReader.packed().vocabulary())
                    .read("example", in)
                    .pile()
                    .orElseThrow();
            return Noting.mark(pile.log().get(0));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts into a folder a pile, a file that cannot be read, and one that was removed. */
    static void furnish(Path folder) throws IOException {
        TestServer.plantExample(folder);
        Files.writeString(folder.resolve("broken.json"), "{\"heapwright\": \"pile/1\", \"name\": 7}");
        Files.createDirectory(folder.resolve("Removed"));
        Files.writeString(
                folder.resolve("Removed/old-heap.json"), "{\"heapwright\": \"pile/1\", \"name\": \"Old heap\"}");
    }
}
