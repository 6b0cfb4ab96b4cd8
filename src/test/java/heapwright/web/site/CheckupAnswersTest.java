package heapwright.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Sign;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CheckupAnswersTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static Map<String, String> parameters(String query) {
        Map<String, String> parameters = new LinkedHashMap<>();
        for (String part : query.split("&")) {
            String[] pair = part.split("=", 2);
            parameters.put(pair[0], URLDecoder.decode(pair[1], StandardCharsets.UTF_8));
        }
        return parameters;
    }

    @Test
    void answersComeBackFromTheAddressTheyMake() {
        CheckupAnswers said = new CheckupAnswers(
                Set.of(Sign.SMELLS_SOUR, Sign.SOGGY),
                Set.of(Sign.SMOKE),
                Set.of(Sign.ANTS),
                Map.of("core", "12,5", "use", "lawn"),
                TODAY.minusDays(3));
        assertEquals(said, CheckupAnswers.ofAddress(parameters(said.query())::get, TODAY));
    }

    @Test
    void aFormGivesYesAndNoAndLeavesTheRest() {
        Map<String, String> form =
                Map.of("sign.smells-sour", "yes", "sign.soggy", "no", "sign.ants", "", "built", " 14 ");
        CheckupAnswers said = CheckupAnswers.ofForm(form::get, TODAY);
        assertEquals(Set.of(Sign.SMELLS_SOUR), said.yes());
        assertEquals(Set.of(Sign.SOGGY), said.no());
        assertEquals(Map.of("built", "14"), said.about());
        assertEquals(TODAY, said.on());
    }

    @Test
    void oneAnswerReplacesTheOtherAndDoesNotKnowPassesOver() {
        CheckupAnswers said = CheckupAnswers.ofAddress(Map.of("y", "soggy")::get, TODAY);
        assertEquals(Set.of(Sign.SOGGY), said.with(Sign.SOGGY, "no").no());
        assertTrue(said.with(Sign.SOGGY, "no").yes().isEmpty());
        assertEquals(Set.of(Sign.ANTS), said.with(Sign.ANTS, "pass").passed());
        assertFalse(said.with(Sign.ANTS, "pass").nothing());
    }

    @Test
    void whatAnAddressHoldsBesidesIsLeftOut() {
        Map<String, String> odd =
                Map.of("y", "no-such-sign.soggy", "on", "yesterday", "core", "x".repeat(50), "z", "1");
        CheckupAnswers said = CheckupAnswers.ofAddress(odd::get, TODAY);
        assertEquals(Set.of(Sign.SOGGY), said.yes());
        assertEquals(Set.of(), said.no());
        assertEquals(Map.of(), said.about());
        assertEquals(TODAY, said.on());
        assertTrue(CheckupAnswers.ofAddress(key -> null, TODAY).nothing());
    }
}
