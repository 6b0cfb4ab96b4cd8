package heapwright.web;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Takes the pictures of the guide anew, into {@code docs/guide}; they show an invented pile. Run by hand. */
final class GuidePictures {

    private static final Path GUIDE = Path.of("docs", "guide");

    private static final String PILE = "/piles/heap-by-the-birches";

    private static final List<Picture> PICTURES = List.of(
            new Picture("start-phone", "/", Chrome.PHONE, 860, ColorScheme.LIGHT),
            new Picture("checkup-phone", "/checkup", Chrome.PHONE, 860, ColorScheme.LIGHT),
            new Picture("faults-phone", "/checkup?y=soggy&core=999&built=soon", Chrome.PHONE, 740, ColorScheme.LIGHT),
            new Picture("blank-phone", "/checkup/blank", Chrome.PHONE, 740, ColorScheme.DARK),
            new Picture("pile-phone-dark", PILE, Chrome.PHONE, 860, ColorScheme.DARK),
            new Picture(
                    "result-desk",
                    "/result?y=smells-sour.soggy.core-cold&n=smells-ammonia&built=2&size=1&out=-3",
                    Chrome.DESK,
                    1100,
                    ColorScheme.LIGHT),
            new Picture("season-phone", "/season", Chrome.PHONE, 860, ColorScheme.LIGHT),
            new Picture("ready-phone", PILE + "/ready", Chrome.PHONE, 1000, ColorScheme.LIGHT),
            new Picture("heat-phone", PILE + "/heat", Chrome.PHONE, 860, ColorScheme.LIGHT),
            new Picture("edit-phone", PILE + "/edit", Chrome.PHONE, 860, ColorScheme.LIGHT),
            new Picture("notes-phone", PILE + "/notes", Chrome.PHONE, 860, ColorScheme.LIGHT),
            new Picture("open-phone", "/open", Chrome.PHONE, 620, ColorScheme.DARK),
            new Picture("why-desk", "/why/example", Chrome.DESK, 1100, ColorScheme.LIGHT),
            new Picture(
                    "build-desk",
                    "/build?r=leaves-mixed~10~bucket~&r=grass-clippings~6~bucket~&r=kitchen-scraps~3~bucket~"
                            + "&h=cardboard~~bucket~&h=straw-general~4~bucket~",
                    Chrome.DESK,
                    1100,
                    ColorScheme.LIGHT));

    private record Picture(String name, String path, int width, int height, ColorScheme scheme) {}

    private GuidePictures() {}

    public static void main(String[] given) throws IOException {
        Path folder = Files.createTempDirectory("guide");
        TestServer.plantExample(folder);
        try (TestServer server = TestServer.over(folder);
                Chrome chrome = new Chrome()) {
            for (Picture picture : PICTURES) {
                try (BrowserContext visitor = chrome.visitor(picture.width(), picture.scheme(), true)) {
                    Page page = visitor.newPage();
                    page.setViewportSize(picture.width(), picture.height());
                    page.navigate(server.at(picture.path()));
                    page.screenshot(new Page.ScreenshotOptions().setPath(GUIDE.resolve(picture.name() + ".png")));
                }
            }
        }
    }
}
