package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.KnowledgeReader;
import heapwright.process.heat.PublishedCourse.Half;
import heapwright.process.heat.PublishedCourse.Kind;
import heapwright.process.heat.PublishedCourse.Source;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The published courses")
class CoursesTest {
    private static final List<PublishedCourse> ALL = PublishedCourses.all();
    private static final Set<String> KNOWN =
            KnowledgeReader.packed().materials().keySet();
    private static final Pattern WORD = Pattern.compile("[A-Z][A-Z0-9]{3,}");

    @Test
    @DisplayName("are enough")
    void enough() {
        assertTrue(ALL.size() >= 24, ALL.size() + " courses");
        long figures = ALL.stream().mapToLong(c -> c.figures().size()).sum();
        assertTrue(figures >= 80, figures + " figures");
    }

    @Test
    @DisplayName("are split in two by source, with each kind in both halves")
    void split() {
        for (Half half : Half.values()) {
            Set<Kind> kinds = ALL.stream()
                    .filter(c -> c.half() == half)
                    .map(PublishedCourse::kind)
                    .collect(Collectors.toCollection(() -> EnumSet.noneOf(Kind.class)));
            assertEquals(EnumSet.allOf(Kind.class), kinds, half.toString());
        }
        ALL.stream()
                .collect(Collectors.groupingBy(
                        c -> c.source().key(), Collectors.mapping(PublishedCourse::half, Collectors.toSet())))
                .forEach((key, halves) -> assertEquals(1, halves.size(), key + " stands in both halves"));
    }

    @Test
    @DisplayName("keep no source that the table of behaviour is held to")
    void keptIsUntouched() {
        Set<String> used = Behaviours.all().stream()
                .flatMap(b -> WORD.matcher(b.source()).results().map(r -> r.group()))
                .collect(Collectors.toSet());
        assertTrue(used.contains("KING12"), "the sources of the table are read");
        for (PublishedCourse course : ALL) {
            if (course.half() == Half.KEPT) {
                assertFalse(
                        used.contains(course.source().key()), course.id() + " is kept, but its source sets constants");
            }
        }
    }

    @Test
    @DisplayName("name their source, what was seen of it and what was guessed; few are from memory")
    void sources() {
        for (PublishedCourse course : ALL) {
            Source s = course.source();
            for (String text : List.of(s.key(), s.by(), s.title(), s.address(), s.type(), s.seen())) {
                assertFalse(text.isBlank(), course.id());
            }
            assertTrue(Set.of("published", "published (quoted)", "from memory").contains(s.known()), course.id());
            assertFalse(course.guessed().isEmpty(), course.id() + ": nothing guessed?");
        }
        long recalled = ALL.stream()
                .filter(c -> c.source().fromMemory())
                .mapToLong(c -> c.figures().size())
                .sum();
        long figures = ALL.stream().mapToLong(c -> c.figures().size()).sum();
        assertTrue(3 * recalled <= figures, recalled + " of " + figures + " figures are from memory");
    }

    @Test
    @DisplayName("say one thing about the same source everywhere")
    void oneSource() {
        ALL.stream()
                .collect(Collectors.groupingBy(
                        c -> c.source().key(), Collectors.mapping(PublishedCourse::source, Collectors.toSet())))
                .forEach((key, sources) -> assertEquals(1, sources.size(), key));
    }

    @Test
    @DisplayName("have figures that can be looked up in their course")
    void figures() {
        for (PublishedCourse course : ALL) {
            assertFalse(course.figures().isEmpty(), course.id());
            for (PublishedFigure f : course.figures()) {
                String name = course.id() + ": " + f.words();
                assertTrue(f.low() != null || f.high() != null, name);
                assertTrue(f.least() <= f.most(), name);
                assertTrue(f.day() == null || f.day() >= 1 && f.day() <= course.days(), name);
                assertTrue(f.to() == null || f.to() > f.day() && f.to() <= course.days(), name);
                boolean daily =
                        switch (f.what()) {
                            case PEAK, PEAK_DAY, DAY_AT, DAYS_OVER, NEAR_OUTDOORS_DAY -> false;
                            default -> true;
                        };
                assertEquals(daily, f.day() != null, name);
                boolean limited = f.what() == PublishedFigure.What.DAY_AT || f.what() == PublishedFigure.What.DAYS_OVER;
                assertEquals(limited, f.celsius() != null, name);
                String unit = f.what().isTemperature()
                        ? "°C"
                        : List.of("days", "share").contains(f.unit()) ? f.unit() : "";
                assertEquals(unit, f.unit(), name);
            }
        }
    }

    @Test
    @DisplayName("have weather, recipe and size")
    void setUp() {
        for (PublishedCourse course : ALL) {
            assertTrue(course.volumeM3() > 0, course.id());
            assertFalse(course.recipe().isEmpty(), course.id());
            course.recipe().forEach(p -> assertTrue(KNOWN.contains(p.material()), course.id() + ": " + p.material()));
            boolean monthly = course.weather().monthlyC() != null;
            assertEquals(!monthly, course.weather().points() != null, course.id());
            assertEquals(monthly, course.weather().built() != null, course.id());
            assertTrue(
                    !monthly
                            || course.weather().monthlyC().length == 12
                                    && Arrays.stream(course.weather().monthlyC())
                                            .allMatch(c -> c > -40 && c < 40),
                    course.id());
        }
    }
}
