package heapwright.process.heat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Reads the published courses, one file each. */
final class PublishedCourses {
    private static final Path FOLDER = Path.of("src", "test", "resources", "courses");
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private PublishedCourses() {}

    /** All of them, by id. A field that is not known is an error. */
    static List<PublishedCourse> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(f -> f.toString().endsWith(".json"))
                    .sorted()
                    .map(PublishedCourses::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PublishedCourse read(Path file) {
        try {
            PublishedCourse course = MAPPER.readValue(file.toFile(), PublishedCourse.class);
            if (!file.getFileName().toString().equals(course.id() + ".json")) {
                throw new IllegalArgumentException(file + " holds the course " + course.id());
            }
            return course;
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
