package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.fact.ModelSays;
import heapwright.knowledge.ModelFinding;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What a story tells the rules")
class ModelFactsTest {

    private static List<ModelSays> says(VerdictDegrees leaning, Factor ifWrong, Sign... seen) {
        Pile pile = WinterPiles.good("");
        PileModel model = PileModel.of(pile, WinterPiles.materials(pile), List.of(), List.of(seen))
                .orElseThrow();
        return ModelFacts.of(new Story(
                new PileNow(model, null), null, null, null, Factor.NONE, ifWrong, Optional.empty(), leaning, 7, null));
    }

    private static ModelSays so(ModelFinding finding, double degree) {
        return new ModelSays(finding, 7, degree);
    }

    @Test
    @DisplayName("is each verdict in its degree, and none that is not so at all")
    void verdicts() {
        assertEquals(
                List.of(
                        so(ModelFinding.COLD_AS_HEALTHY, 0.2),
                        so(ModelFinding.SPENT, 0.3),
                        so(ModelFinding.COLDER_THAN_HEALTHY, 0.5)),
                says(new VerdictDegrees(0, 0.3, 0.5, 0.2), Factor.UNKNOWN));
        assertEquals(List.of(), says(new VerdictDegrees(1, 0, 0, 0), Factor.WATER));
    }

    @ParameterizedTest
    @CsvSource({
        "WATER, SHORT_OF_WATER",
        "AIR, SHORT_OF_AIR",
        "NITROGEN, SHORT_OF_NITROGEN",
        "ACID, TOO_SOUR",
        "PIECES, TOO_COARSE",
        "HANDLING, OPENED_TOO_OFTEN"
    })
    @DisplayName("is what is wrong, in the degree in which something is")
    void wrong(Factor factor, ModelFinding finding) {
        assertEquals(
                List.of(so(ModelFinding.COLDER_THAN_HEALTHY, 0.6), so(finding, 0.6)),
                says(new VerdictDegrees(0, 0, 0.6, 0), factor));
    }

    @Test
    @DisplayName("is not once more what was smelt or seen")
    void noticed() {
        List<ModelSays> wrong = List.of(so(ModelFinding.COLDER_THAN_HEALTHY, 0.6));
        assertEquals(wrong, says(new VerdictDegrees(0, 0, 0.6, 0), Factor.AIR, Sign.SMELLS_PUTRID));
        assertEquals(wrong, says(new VerdictDegrees(0, 0.4, 0.6, 0), Factor.UNKNOWN, Sign.DARK_CRUMBLY));
        assertEquals(
                List.of(so(ModelFinding.COLDER_THAN_HEALTHY, 0.6), so(ModelFinding.SHORT_OF_WATER, 0.6)),
                says(new VerdictDegrees(0, 0, 0.6, 0), Factor.WATER, Sign.SMELLS_PUTRID),
                "the nose says nothing of water");
        assertEquals(
                List.of(
                        so(ModelFinding.SPENT, 0.4),
                        so(ModelFinding.COLDER_THAN_HEALTHY, 0.6),
                        so(ModelFinding.SHORT_OF_AIR, 0.6)),
                says(new VerdictDegrees(0, 0.4, 0.6, 0), Factor.AIR, Sign.DRY_UNDER_DAMP_SKIN),
                "a dry middle says nothing of air or food");
    }
}
