package heapwright.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The addresses that tests of every page visit, and the folder of piles behind them. */
final class VisitedPages {

    private static final String WET = "y=smells-sour.soggy.core-cold&n=smells-ammonia&age=14&size=1&out=-3";

    private static final String PLAN = "/build?r=leaves~10~bucket~&r=grass~16~bucket~20&h=cardboard~~bucket~"
            + "&h=straw~2~bucket~&length=100&width=100&height=100";

    static final List<String> ALL = List.of(
            "/",
            "/checkup",
            "/checkup?y=smells-sour.core-cold&n=soggy&core=x",
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

    /** Puts into a folder a pile, a file that cannot be read, and one that was removed. */
    static void furnish(Path folder) throws IOException {
        TestServer.plantExample(folder);
        Files.writeString(folder.resolve("broken.json"), "{\"heapwright\": \"pile/1\", \"name\": 7}");
        Files.createDirectory(folder.resolve("Removed"));
        Files.writeString(
                folder.resolve("Removed/old-heap.json"), "{\"heapwright\": \"pile/1\", \"name\": \"Old heap\"}");
    }
}
