package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a refusal allows is allowed to its very ends, and nothing beyond them is. */
class SpansTest {

    private static final Pattern SPAN = Pattern.compile("a figure from (\\S+) to (\\S+)( .*)?");

    private final PileReader reader = new PileReader(new TestVocabulary());

    private List<Problem> problems(String fields) {
        String document = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-21\"," + fields + "}";
        return reader.read("x", document.getBytes(StandardCharsets.UTF_8)).problems();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "'place':{'latitude':#}",
                "'place':{'monthlyMeanC':[#,1,1,1,1,1,1,1,1,1,1,1]}",
                "'container':{'length':{'value':#,'unit':'m'}}",
                "'container':{'width':{'value':#,'unit':'m'}}",
                "'container':{'height':{'value':#,'unit':'m'}}",
                "'container':{'volume':{'value':#,'unit':'m3'}}",
                "'recipe':[{'material':'urea','amount':1,'unit':'kg','piece':{'value':#,'unit':'cm'}}]",
                "'log':[{'date':'2026-11-21','measured':{'core':{'value':#,'unit':'C'}}}]",
                "'log':[{'date':'2026-11-21','measured':{'core':{'value':120,'unit':'C'},'coreLowest':{'value':#,'unit':'C'}}}]",
                "'log':[{'date':'2026-11-21','measured':{'coreDepth':{'value':#,'unit':'cm'}}}]",
                "'log':[{'date':'2026-11-21','measured':{'outdoor':{'value':#,'unit':'C'}}}]",
                "'log':[{'date':'2026-11-21','measured':{'moisture':{'value':#,'unit':'%'}}}]",
                "'log':[{'date':'2026-11-21','measured':{'bulkDensity':{'value':#,'unit':'kg/m3'}}}]",
                "'log':[{'date':'2026-11-21','measured':{'ph':{'value':#,'unit':'pH'}}}]",
                "'log':[{'date':'2026-11-21','measured':{'height':{'value':#,'unit':'m'}}}]",
                "'measures':{'bucket':{'value':#,'unit':'L'}}",
                "'materials':[{'id':'urea','carbonToNitrogen':#}]",
                "'materials':[{'id':'urea','density':{'value':#,'unit':'kg/m3'}}]",
                "'limits':{'turning-frost':#}"
            })
    void theEndsOfASpanBelongToIt(String template) {
        String fields = template.replace('\'', '"');
        List<Problem> far = problems(fields.replace("#", "1e7"));
        assertEquals(1, far.size(), far::toString);
        Matcher span = SPAN.matcher(far.get(0).allowed());
        assertTrue(span.matches(), far.get(0).allowed());
        BigDecimal low = new BigDecimal(span.group(1));
        BigDecimal high = new BigDecimal(span.group(2));
        BigDecimal hair = new BigDecimal("0.00001");
        assertEquals(List.of(), problems(fields.replace("#", low.toPlainString())), "low");
        assertEquals(List.of(), problems(fields.replace("#", high.toPlainString())), "high");
        for (BigDecimal beyond : List.of(low.subtract(hair), high.add(hair))) {
            List<Problem> refused = problems(fields.replace("#", beyond.toPlainString()));
            assertEquals(1, refused.size(), beyond + " " + refused);
            assertEquals(far.get(0).allowed(), refused.get(0).allowed());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "100,t,true",
        "100.001,t,false",
        "0.001,g,true",
        "0.0009,g,false",
        "1000,m3,true",
        "1000.01,m3,false",
        "0.001,mL,true",
        "0.0009,mL,false"
    })
    void anAmountIsAtLeastASpeckAndAtMostAField(String amount, String unit, boolean allowed) {
        List<Problem> problems =
                problems("\"recipe\":[{\"material\":\"urea\",\"amount\":" + amount + ",\"unit\":\"" + unit + "\"}]");
        assertEquals(allowed, problems.isEmpty(), problems::toString);
    }

    @Test
    void aListMayBeAsLongAsItsRefusalSaysAndNoLonger() {
        String entry = "{\"date\":\"2026-11-21\"}";
        String stock = "{\"material\":\"urea\"}";
        String ingredient = "{\"material\":\"urea\",\"amount\":1,\"unit\":\"kg\"}";
        held("\"recipe\":[#]", ingredient, Lists.RECIPE);
        held("\"log\":[#]", entry, Lists.LOG);
        held("\"atHand\":[#]", stock, Lists.STOCK);
        held("\"log\":[{\"date\":\"2026-11-21\",\"seen\":[#]}]", "\"soggy\"", Lists.SIGNS);
        held("\"log\":[{\"date\":\"2026-11-21\",\"done\":[#]}]", "\"turned-fully\"", Lists.TOKENS);
        held("\"log\":[{\"date\":\"2026-11-21\",\"added\":[#]}]", ingredient, Lists.ADDED);
    }

    private void held(String fields, String item, int most) {
        assertEquals(List.of(), problems(fields.replace("#", repeated(item, most))));
        List<Problem> problems = problems(fields.replace("#", repeated(item, most + 1)));
        assertEquals(1, problems.size(), problems::toString);
        assertEquals("a list of " + (most + 1) + " items", problems.get(0).found());
        assertEquals("a list [ … ] of up to " + most + " items", problems.get(0).allowed());
    }

    private static String repeated(String item, int times) {
        return String.join(",", IntStream.range(0, times).mapToObj(i -> item).toList());
    }
}
