package heapwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the fuzzer found once, tried at each build; new finds are kept by copying them into the folder. */
class FuzzCorpusTest {

    private static final Path KEPT = Path.of("src/test/resources/fuzz");

    @ParameterizedTest
    @MethodSource("keptForTheReader")
    void theReaderAnswers(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        assertDoesNotThrow(() -> ReaderTarget.fuzzerTestOneInput(bytes));
    }

    @ParameterizedTest
    @MethodSource("keptForThePipeline")
    void thePipelineAnswers(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        assertDoesNotThrow(() -> PipelineTarget.answer(EditScript.documentOf(bytes)));
    }

    static List<Path> keptForTheReader() throws IOException {
        return kept("reader");
    }

    static List<Path> keptForThePipeline() throws IOException {
        return kept("pipeline");
    }

    private static List<Path> kept(String target) throws IOException {
        try (Stream<Path> files = Files.list(KEPT.resolve(target))) {
            return files.sorted().toList();
        }
    }

    /** Scripts of different bytes make different documents, and most of these are piles: else nothing is tried. */
    @Test
    void scriptsMakeManyDocumentsThatAreRead() {
        Set<String> documents = new TreeSet<>();
        for (int first = 0; first < 40; first++) {
            documents.add(
                    EditScript.documentOf(new byte[] {0, (byte) (first * 5), 0, (byte) first, 1, 0, (byte) first}));
        }
        assertTrue(documents.size() > 30, documents.size() + " documents");
        long read = documents.stream()
                .filter(d -> PipelineTarget.read(d).isPresent())
                .count();
        assertTrue(read > documents.size() / 2, read + " of " + documents.size() + " are piles");
    }

    @Test
    void aFigureThatIsNoneIsSeen() {
        assertThrows(AssertionError.class, () -> PipelineTarget.figures("Mix in NaN kg of leaves."));
        assertDoesNotThrow(() -> PipelineTarget.figures("Mix in 4 kg of leaves."));
        assertTrue(PipelineTarget.read("\"no pile\"").isEmpty());
    }
}
