package heapwright.web.view;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import heapwright.advice.winter.PileOutlook;
import heapwright.advice.winter.Story;
import heapwright.report.Layout;
import heapwright.report.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The chart of a course as a picture that stands alone, in greys: the drawing of the page with its legend beneath. It needs
 * nothing from outside, and has a title and a description for screen readers.
 */
public final class CoursePicture {

    private static final String PACKAGE = "heapwright.web.page";
    private static final int LINE = 17;
    /** So many letters fit across. */
    private static final int LETTERS = 64;

    private final Words words;
    private final CourseViews views;
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(null, ContentType.Html, null, PACKAGE);

    public CoursePicture(Words words) {
        this.words = words;
        this.views = new CourseViews(words);
    }

    /** A line of the legend and where it stands. */
    public record Line(int y, String text) {}

    /** The past of a pile as SVG. */
    public String of(Story story) {
        return draw(views.view(story.model().pile(), Optional.of(story)), "chart.legend");
    }

    /**
     * What lies ahead of a pile as SVG.
     *
     * @param description the same in words
     */
    public String of(PileOutlook ahead, String description) {
        return draw(views.view(ahead, description), "chart.legend-ahead");
    }

    private String draw(CourseView view, String legend) {
        List<String> said = Stream.of(view.strip().letters(), words.text(legend), words.text("model.aid-short"))
                .flatMap(text -> Layout.wrapped(text, LETTERS).stream())
                .toList();
        List<Line> lines = IntStream.range(0, said.size())
                .mapToObj(i -> new Line(view.height() + (i + 1) * LINE, said.get(i)))
                .toList();
        StringOutput output = new StringOutput();
        engine.render(
                "picture.jte",
                Map.of("c", view, "lines", lines, "height", view.height() + (lines.size() + 1) * LINE),
                output);
        return sound(output.toString());
    }

    /** Without what XML has no place for: a name may hold it, since HTML does not mind. */
    private static String sound(String text) {
        return text.codePoints()
                .filter(c -> c >= 0x20 && c != 0xFFFE && c != 0xFFFF || Character.isWhitespace(c))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
