package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.SignInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The factors are the definitions of the international yard and pound and the US gallon. */
@DisplayName("A sentence in US units")
class UsWordingTest {

    private final UsWording wording = new UsWording(Catalogue.english());

    @ParameterizedTest
    @DisplayName("says each quantity as people there would")
    @CsvSource(delimiter = '|', textBlock = """
                    water of at most 40 °C            | water of at most 104 °F
                    moist and hot, about 55–60 °C     | moist and hot, about 131–140 °F
                    a wind chill of −28 °C            | a wind chill of -18 °F
                    missed peaks by more than 5 °C.   | missed peaks by more than 9 °F.
                    about 20 cm long                  | about 8 in long
                    under 0.9 m, in cold 1.5 m        | under 3 ft, in cold 5 ft
                    a screen of 1–2 cm                | a screen of 0.39–0.79 in
                    a mesh of 6 mm                    | a mesh of 0.24 in
                    within about 10 m to water        | within about 33 ft to water
                    under 1–2 m³                      | under 1.3–2.6 yd³
                    fill a 10 L bucket: over 7 kg     | fill a 2.6 gal bucket: over 15 lb
                    30 L weighs 15–27 kg; 23 kg       | 7.9 gal weighs 33–60 lb; 51 lb
                    only about 16 g of chalk          | only about 0.56 oz of chalk
                    4 to 6 kg is good                 | 8.8 to 13 lb is good
                    weighs 0.5–0.9 kg a litre         | weighs 0.5–0.9 kg a litre
                    250 kg/m³ and 18 W/kg             | 250 kg/m³ and 18 W/kg
                    pH 6, 30 days, 5 minutes, C:N 30  | pH 6, 30 days, 5 minutes, C:N 30
                    """)
    void said(String metric, String us) {
        assertEquals(us, wording.apply(metric));
    }

    @Test
    @DisplayName("leaves no metric quantity in what a person is told, and every other sentence as it is")
    void tables() {
        Words metric = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
        Words us = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.US);
        List<String> before = sentences(metric.knowledge());
        List<String> after = sentences(us.knowledge());
        Pattern quantity = Pattern.compile("\\d ?(°C|cm|mm|m|m³|kg|g|L)(?![\\w³/])");
        int changed = 0;
        for (int i = 0; i < before.size(); i++) {
            boolean told = quantity.matcher(before.get(i)).find();
            changed += before.get(i).equals(after.get(i)) ? 0 : 1;
            assertEquals(told, !before.get(i).equals(after.get(i)), before.get(i));
            assertFalse(quantity.matcher(after.get(i).replace("kg a litre", "")).find(), after.get(i));
        }
        assertTrue(changed > 25, "changed " + changed);
        assertEquals(metric.knowledge().limits(), us.knowledge().limits());
        assertEquals(metric.knowledge().materials(), us.knowledge().materials());
    }

    private static List<String> sentences(Knowledge knowledge) {
        List<String> all = new ArrayList<>();
        for (SignInfo sign : knowledge.signs().values()) {
            all.addAll(List.of(sign.ask(), sign.say(), sign.deny(), sign.how()));
        }
        for (CauseInfo cause : knowledge.causes().values()) {
            all.addAll(List.of(cause.summary(), cause.why(), cause.tellApart()));
        }
        for (RemedyInfo remedy : knowledge.remedies().values()) {
            all.addAll(List.of(remedy.how(), remedy.expect(), remedy.otherwise(), remedy.notWhen()));
            remedy.gently().ifPresent(all::add);
        }
        knowledge.cautions().values().forEach(c -> all.addAll(List.of(c.title(), c.text(), c.why())));
        return all;
    }
}
