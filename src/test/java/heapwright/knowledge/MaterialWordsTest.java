package heapwright.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The words for materials in the packed tables, as the reader of documents takes them. */
class MaterialWordsTest {

    private final Knowledge knowledge = KnowledgeReader.packed();
    private final PileReader reader = new PileReader(knowledge.vocabulary());

    private ReadResult read(String word) {
        String document = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-21\",\"recipe\":[{\"material\":\""
                + word.replace("\"", "\\\"") + "\",\"amount\":1,\"unit\":\"kg\"}]}";
        return reader.read("words.json", document.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void everyNameOfTheTableIsTakenInAnyCaseAndWithAnyParting() {
        List<String> wrong = new ArrayList<>();
        for (Material material : knowledge.materials().values()) {
            List<String> names = new ArrayList<>(material.aliases());
            names.add(material.name());
            names.add(material.id());
            for (String name : names) {
                for (String form :
                        List.of(name, name.toUpperCase(Locale.ROOT), name.replace(' ', '-'), name.replace('-', ' '))) {
                    String read = read(form)
                            .pile()
                            .map(Pile::recipe)
                            .map(r -> r.get(0).material())
                            .orElse("nothing");
                    if (!read.equals(material.id())) {
                        wrong.add(form + " → " + read + ", not " + material.id());
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void theDoorsLookUpInTheSameWay() {
        for (String word : List.of("grass clippings", "Lawn-Clippings", "GRASS_CLIPPINGS")) {
            assertEquals(
                    "grass-clippings", knowledge.material(word).orElseThrow().id(), word);
            assertEquals(
                    "grass-clippings",
                    read(word).pile().orElseThrow().recipe().get(0).material(),
                    word);
        }
    }

    @Test
    void aWordForSeveralIsToldWithTheCandidates() {
        Problem problem = read("clippings").problems().get(0);
        assertTrue(problem.allowed().contains("grass-clippings"), problem.allowed());
        assertTrue(problem.allowed().contains(" or "), problem.allowed());
    }
}
