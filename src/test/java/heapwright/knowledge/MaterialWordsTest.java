package heapwright.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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

    @ParameterizedTest(name = "{0}: {1}")
    @DisplayName("what a grower in Britain, Ireland, Scandinavia or North America types leads to what is meant")
    @CsvSource({
        "dill, vegetable-waste",
        "parsley, vegetable-waste",
        "Peppers, vegetable-waste",
        "mushrooms, vegetable-waste",
        "house plants, bedding-plants",
        "geraniums, bedding-plants",
        "egg carton, paper-domestic",
        "egg trays, paper-domestic",
        "pellets, pellets-wood",
        "straw pellets, pellets-straw",
        "nettle tea, plant-tea",
        "comfrey tea, plant-tea",
        "bokashi, bokashi",
        "beer, beer-wine",
        "vinegar, beer-wine",
        "digestate, digestate",
        "lingonberries, fruit-waste",
        "strawberries, fruit-waste",
        "strawberry runners, bedding-plants",
        "nappy, human-faeces",
        "diaper, human-faeces",
        "aspen leaves, leaves-mixed",
        "willow leaves, leaves-mixed",
        "willow prunings, prunings-mixed",
        "woodchip, chips-hardwood",
        "bark chippings, bark-softwood",
        "beech hedge, shrub-trimmings",
        "pet bedding, bedding-pet-herbivore",
        "hemp bedding, straw-general",
        "spuds, potato-cull",
        "neeps, turnip-root",
        "sweet potatoes, turnip-root",
        "corn husks, maize-green",
        "arugula, lettuce",
        "scallions, onion",
        "collards, cabbage-leaves",
        "junk mail, paper-mixed",
        "loo rolls, cardboard",
        "lawn thatch, moss",
        "haylage, grass-mature",
        "chickweed, weeds-fresh",
        "horse chestnut leaves, leaves-oak",
        "spruce twigs, conifer-clippings",
        "driftwood, twigs",
        "moose droppings, manure-goat",
        "quail manure, manure-hen-home",
        "washing soda, baking-soda",
        "furze, thorny-stems",
        "nail clippings, hair",
        "wine corks, bark-softwood"
    })
    void typed(String word, String id) {
        assertEquals(id, knowledge.material(word).map(Material::id).orElse("nothing"));
    }

    @ParameterizedTest(name = "{0}: {1}, not {2}")
    @DisplayName("a word is found as a word, one or many of a thing, and not inside another")
    @CsvSource({
        "ash, wood-ash, pumpkin",
        "rat, animal-carcasses, calcium-nitrate",
        "straw, straw-general, fruit-waste",
        "leaf, leaves-mixed, pumpkin",
        "strawberry, fruit-waste, straw-general",
        "lingonberry, fruit-waste, canes",
        "aspen, chips-hardwood, leaves-oak",
        "hedge clippings, hedge-soft, grass-clippings",
        "tea, tea-leaves, meat-scraps",
        "corn, corn-cobs, cones",
        "painted wood chips, wood-painted, chips-maple",
        "purple wood chips, chips-hardwood, wood-painted"
    })
    void byWord(String word, String among, String never) {
        List<String> found = knowledge.materialNames().fitting(word);
        assertTrue(found.contains(among), found.toString());
        assertFalse(found.contains(never), found.toString());
    }

    @Test
    void noWordAtAllFitsNothing() {
        assertEquals(List.of(), knowledge.materialNames().fitting(" - "));
        assertEquals(List.of(), knowledge.materialNames().fitting("xylophone"));
    }

    @ParameterizedTest
    @DisplayName("what is barred is not taken for its clean twin")
    @ValueSource(strings = {"painted wood chips", "purple wood chips", "treated wood shavings"})
    void noCleanTwin(String word) {
        Problem problem = read(word).problems().get(0);
        String offered = problem.allowed() + problem.closest().orElse("");
        assertFalse(offered.contains("chips-maple") || offered.contains("shavings-softwood"), offered);
    }
}
