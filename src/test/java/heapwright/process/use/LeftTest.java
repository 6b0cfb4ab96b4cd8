package heapwright.process.use;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.ReadResult;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("How much compost there is")
class LeftTest {

    private static Left left(String fields) {
        String document = "{\"heapwright\":\"pile/1\",\"asOf\":\"2027-05-02\",\"built\":\"2026-08-20\"" + fields + "}";
        ReadResult read =
                new PileReader(TestPile.KNOWLEDGE.vocabulary()).read("x", document.getBytes(StandardCharsets.UTF_8));
        Pile pile = ((ReadResult.Accepted) read).value();
        return Left.of(pile, TestPile.KNOWLEDGE);
    }

    private static final String HEAP = ",\"container\":{\"kind\":\"open-heap\",\"length\":{\"value\":1,\"unit\":\"m\"},"
            + "\"width\":{\"value\":1,\"unit\":\"m\"},\"height\":{\"value\":1,\"unit\":\"m\"}}";

    @Test
    @DisplayName("is what the tape says where the height was measured since (arithmetic)")
    void measured() {
        Left left = left(
                HEAP + ",\"log\":[{\"date\":\"2027-05-01\",\"measured\":{\"height\":{\"value\":40,\"unit\":\"cm\"}}}]");
        assertEquals(Left.From.MEASURED, left.from());
        assertEquals(400, left.litres().likely(), 1e-6);
        assertEquals(360, left.litres().low(), 1e-6, "a tape is right to a tenth");
        assertEquals(440, left.litres().high(), 1e-6);
    }

    @Test
    @DisplayName("is at most what the tape said some weeks ago (arithmetic on SASK08)")
    void measuredBefore() {
        Left left = left(
                HEAP + ",\"log\":[{\"date\":\"2027-02-01\",\"measured\":{\"height\":{\"value\":60,\"unit\":\"cm\"}}}]");
        assertEquals(Left.From.MEASURED_BEFORE, left.from());
        assertEquals(660, left.litres().high(), 1e-6);
        assertEquals(180, left.litres().low(), 1e-6, "three tenths of what was measured");
        assertEquals(390, left.litres().likely(), 1e-6, "halfway between that and all of it");
    }

    @Test
    @DisplayName("does not go by the tape where more went in since")
    void measuredBeforeMore() {
        Left left = left(
                HEAP + ",\"log\":[{\"date\":\"2027-04-20\",\"measured\":{\"height\":{\"value\":60,\"unit\":\"cm\"}}},"
                        + "{\"date\":\"2027-04-25\",\"added\":[{\"material\":\"straw-general\",\"amount\":2,\"unit\":\"bucket\"}]}]");
        assertEquals(Left.From.SIZE, left.from());
    }

    /** SASK08: 30 to 50 % of the volume is left of a usual pile. */
    @Test
    @DisplayName("is three to five tenths of the size when built, where that was told")
    void size() {
        Left left = left(HEAP);
        assertEquals(Left.From.SIZE, left.from());
        assertEquals(300, left.litres().low(), 1e-6);
        assertEquals(500, left.litres().high(), 1e-6);
    }

    @Test
    @DisplayName("comes from the recipe where the size is only the room of a bin")
    void recipe() {
        Left left = left(
                ",\"container\":{\"kind\":\"closed-bin\",\"volume\":{\"value\":300,\"unit\":\"L\"}},"
                        + "\"recipe\":[{\"material\":\"leaves-mixed\",\"amount\":10,\"unit\":\"bucket\"},"
                        + "{\"material\":\"kitchen-scraps\",\"amount\":40,\"unit\":\"L\"}],"
                        + "\"log\":[{\"date\":\"2026-10-01\",\"added\":[{\"material\":\"kitchen-scraps\",\"amount\":40,\"unit\":\"L\"}]}]");
        assertEquals(Left.From.RECIPE, left.from());
        assertTrue(left.litres().likely() > 20 && left.litres().likely() < 120, left.toString());
    }

    @Test
    @DisplayName("is called assumed where nothing was told, and of a worm bin is little")
    void assumed() {
        assertEquals(Left.From.ASSUMED, left("").from());
        assertTrue(left(",\"container\":{\"kind\":\"worm-bin\"}").litres().high()
                < left("").litres().low());
    }

    private static final String RECIPE =
            ",\"recipe\":[{\"material\":\"leaves-mixed\",\"amount\":30,\"unit\":\"bucket\"},"
                    + "{\"material\":\"grass-clippings\",\"amount\":10,\"unit\":\"bucket\"}]";
    private static final String FED = ",\"log\":[{\"date\":\"2026-10-01\",\"added\":[{\"material\":\"kitchen-scraps\","
            + "\"amount\":40,\"unit\":\"L\"}]}]";
    private static final String ROOM =
            ",\"container\":{\"kind\":\"slatted-bin\",\"length\":{\"value\":1,\"unit\":\"m\"},"
                    + "\"width\":{\"value\":1,\"unit\":\"m\"},\"height\":{\"value\":1,\"unit\":\"m\"}}";

    @Test
    @DisplayName("comes from the size of a heap that was built in one go, though the recipe was told too")
    void beforeTheRecipe() {
        assertEquals(Left.From.SIZE, left(HEAP + RECIPE).from());
        assertEquals(Left.From.RECIPE, left(HEAP + RECIPE + FED).from(), "it grew since");
        assertEquals(Left.From.RECIPE, left(ROOM + RECIPE).from(), "the sides of a bin are its room");
        assertEquals(Left.From.SIZE, left(ROOM).from(), "and all that is known without a recipe");
        assertEquals(Left.From.RECIPE, left(RECIPE).from());
    }

    /** Twice as much of everything leaves twice as much. */
    @Test
    @DisplayName("goes with the recipe")
    void asMuchAsWentIn() {
        String twice = RECIPE.replace(":30,", ":60,").replace(":10,", ":20,");
        assertEquals(2 * left(RECIPE).litres().likely(), left(twice).litres().likely(), 1e-6);
        assertTrue(left(RECIPE + FED).litres().likely() > left(RECIPE).litres().likely());
    }
}
