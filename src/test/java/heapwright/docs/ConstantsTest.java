package heapwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The page on method")
class ConstantsTest {

    private static final Path PAGE = Path.of("docs", "method", "advice.md");
    private static final Pattern ROW = Pattern.compile("(?m)^\\|.*\\| `(\\w+\\.java)`: (.*) \\|$");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    @Test
    @DisplayName("gives the constants as they stand in the code")
    void constants() throws IOException {
        List<MatchResult> rows = ROW.matcher(Papers.read(PAGE)).results().toList();
        assertTrue(rows.size() > 10, "the tables of constants are gone");
        List<String> wrong = new ArrayList<>();
        for (MatchResult row : rows) {
            String source = source(row.group(1));
            CODE.matcher(row.group(2))
                    .results()
                    .map(m -> m.group(1))
                    .filter(c -> !Pattern.compile(Pattern.quote(c) + "(?![\\d.])")
                            .matcher(source)
                            .find())
                    .forEach(c -> wrong.add(row.group(1) + " has no " + c));
        }
        assertEquals(List.of(), wrong);
    }

    private static String source(String name) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
            Path found = files.filter(f -> f.endsWith(name)).findFirst().orElseThrow();
            return Files.readString(found);
        }
    }
}
