package heapwright.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.KnowledgeReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Cases in a folder that is named by a link")
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "a link needs a right there that users do not have")
class LinkedCasesTest {

    @TempDir
    private Path place;

    @Test
    @DisplayName("are all found")
    void found() throws IOException {
        Path folder = Path.of("cases", "demo");
        Casebook casebook = new Casebook(KnowledgeReader.packed());
        List<Case> there = casebook.below(folder);
        assertFalse(there.isEmpty());
        assertEquals(files(there), files(casebook.below(linked("link", folder))));
    }

    @Test
    @DisplayName("stay out of every fit where the link leads to those that are kept out")
    void keptOut() throws IOException {
        assertTrue(Casebook.keptOut(linked("shut", Path.of("cases", "unfitted"))));
        assertFalse(Casebook.keptOut(linked("open", Path.of("cases", "demo"))));
    }

    private Path linked(String name, Path folder) throws IOException {
        return Files.createSymbolicLink(place.resolve(name), folder.toAbsolutePath());
    }

    private static List<String> files(List<Case> cases) {
        return cases.stream().map(Case::file).toList();
    }
}
