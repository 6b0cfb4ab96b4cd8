package heapwright.web.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advisor;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.report.Catalogue;
import heapwright.report.Units;
import heapwright.report.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CourseViewsTest {

    private final Knowledge knowledge = KnowledgeReader.packed();

    private CourseView course(String log, Units units) {
        String document = "{\"heapwright\":\"pile/1\",\"name\":\"x\",\"built\":\"2026-10-01\",\"log\":[" + log + "]}";
        Pile pile = new PileReader(knowledge.vocabulary())
                .read("x", document.getBytes(StandardCharsets.UTF_8))
                .pile()
                .orElseThrow();
        return new CourseViews(new Words(knowledge, Catalogue.english(), units)).view(pile, Optional.empty());
    }

    /** The example as it is stored, with its story told for nine days later. */
    private CourseView example() throws IOException {
        byte[] document = Files.readAllBytes(Path.of("src/main/resources/heapwright/web/example.json"));
        Pile stored = new PileReader(knowledge.vocabulary())
                .read("example.json", document)
                .pile()
                .orElseThrow();
        Pile today = stored.with(stored.name(), stored.asOf().plusDays(9), stored.recipe(), stored.log());
        return new CourseViews(new Words(knowledge, Catalogue.english(), Units.METRIC))
                .view(stored, Advisor.packed(knowledge).diagnose(today).story());
    }

    private static String core(String date, int celsius) {
        return "{\"date\":\"" + date + "\",\"measured\":{\"core\":{\"value\":" + celsius + ",\"unit\":\"C\"}}}";
    }

    @Test
    void warmerIsHigherAndLaterIsFurtherRight() {
        CourseView course = course(core("2026-10-03", 20) + "," + core("2026-10-20", 70), Units.METRIC);
        List<CourseView.Dot> dots = course.coreDots();
        assertTrue(Double.parseDouble(dots.get(1).y())
                < Double.parseDouble(dots.get(0).y()));
        assertTrue(Double.parseDouble(dots.get(1).x())
                > Double.parseDouble(dots.get(0).x()));
        for (CourseView.Dot dot : dots) {
            assertTrue(Double.parseDouble(dot.x()) >= course.left() && Double.parseDouble(dot.x()) <= course.right());
            assertTrue(Double.parseDouble(dot.y()) >= 0 && Double.parseDouble(dot.y()) <= course.height());
        }
        assertTrue(course.ticks().size() <= 6, course.ticks().toString());
    }

    @Test
    void aLongRecordShowsItsLatestRowsAndKeepsItsChart() {
        CourseView course = course(
                core("2026-10-03", 20) + "," + core("2026-10-10", 40) + "," + core("2026-10-20", 70), Units.METRIC);
        CourseView latest = course.latest(2);
        assertEquals(course.rows().subList(1, 3), latest.rows());
        assertEquals(3, latest.coreDots().size());
        assertEquals(course, course.latest(3));
        assertEquals(course, course.latest(9));
    }

    @Test
    void everyKindOfEventHasItsRow() {
        CourseView course = course(
                "{\"date\":\"2026-10-05\",\"seen\":[\"smells-sour\"],\"done\":[\"turned-fully\",\"watered\"],"
                        + "\"added\":[{\"material\":\"leaves\",\"amount\":1,\"unit\":\"bucket\"}]}",
                Units.METRIC);
        assertEquals(3, course.events().size());
        assertEquals(
                3, course.events().stream().map(CourseView.Event::y).distinct().count());
        assertFalse(course.measured());
        assertEquals(4, course.rows().get(0).age());
    }

    @Test
    void temperaturesAreToldInTheUnitsAskedFor() {
        CourseView course = course(core("2026-10-03", 20), Units.US);
        assertEquals("68 °F", course.rows().get(0).core());
        assertTrue(course.levels().stream().allMatch(l -> l.text().endsWith("°F")));
    }

    @Test
    void theBandOfAHealthyPileStaysInTheBoxThoughItGoesOnToToday() throws IOException {
        CourseView course = example();
        double[] across = Arrays.stream(course.band().split("[ ]"))
                .filter(point -> point.contains(","))
                .mapToDouble(point -> Double.parseDouble(point.split(",")[0]))
                .toArray();
        assertTrue(across.length > 20, course.band());
        assertEquals(course.right(), Arrays.stream(across).max().orElseThrow(), 0.1);
        assertEquals(course.left(), Arrays.stream(across).min().orElseThrow(), 0.1);
    }

    @Test
    void whatHeldItBackIsAStripWithoutGapsWhoseLettersAreExplained() throws IOException {
        CourseView course = example();
        double at = course.left();
        for (CourseView.Held held : course.strip().held()) {
            assertEquals(at, Double.parseDouble(held.x()), 0.15, held.says());
            at += Double.parseDouble(held.width());
            assertTrue(held.y() + held.height() < course.height());
            assertTrue(held.letter().isEmpty() || course.strip().letters().contains(held.letter() + " "), held.says());
        }
        assertEquals(course.right(), at, 0.3);
        assertTrue(course.strip().held().stream().anyMatch(h -> !h.letter().isEmpty()), "something held it back");
        assertEquals(
                List.of(), course(core("2026-10-03", 20), Units.METRIC).strip().held());
    }
}
