package heapwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The links of the papers")
class LinksTest {

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\s]*)(?:#([^)\\s]+))?\\)");

    private final Map<Path, String> texts = new HashMap<>();

    @Test
    @DisplayName("lead to files and entries that are there")
    void links() throws IOException {
        List<Path> papers = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        try (Stream<Path> files = Files.walk(Path.of("docs"))) {
            files.filter(f -> f.toString().endsWith(".md")).sorted().forEach(papers::add);
        }
        List<String> dead = new ArrayList<>();
        int links = 0;
        for (Path paper : papers) {
            for (Matcher m = LINK.matcher(text(paper)); m.find(); links++) {
                if (!m.group(1).startsWith("http") && !leads(paper, m.group(1), m.group(2))) {
                    dead.add(paper + ": " + m.group());
                }
            }
        }
        assertEquals(List.of(), dead);
        assertTrue(links > 1000, "the links are gone");
    }

    private boolean leads(Path paper, String file, String entry) {
        Path target = file.isEmpty() ? paper : paper.resolveSibling(file).normalize();
        return Files.exists(target)
                && (entry == null
                        || text(target).contains("<a id=\"" + entry + "\"></a>")
                        || headings(target).contains(entry));
    }

    /** What the headings of a paper are called in links: their words in small letters, joined by hyphens. */
    private List<String> headings(Path paper) {
        return text(paper)
                .lines()
                .filter(line -> line.startsWith("#"))
                .map(line -> line.replaceFirst("#+ +", "")
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9 -]", "")
                        .replace(' ', '-'))
                .toList();
    }

    private String text(Path paper) {
        return texts.computeIfAbsent(paper, Papers::read);
    }
}
