package heapwright.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RecipeFormTest {

    private static RecipeForm back(String query) {
        List<String[]> pairs =
                Arrays.stream(query.split("&")).map(p -> p.split("=", 2)).toList();
        return RecipeForm.ofAddress(
                name -> pairs.stream()
                        .filter(p -> p[0].equals(name))
                        .map(p -> URLDecoder.decode(p[1], StandardCharsets.UTF_8))
                        .toList(),
                name -> pairs.stream()
                        .filter(p -> p[0].equals(name))
                        .map(p -> URLDecoder.decode(p[1], StandardCharsets.UTF_8))
                        .findFirst()
                        .orElse(null));
    }

    @Test
    void aRecipeComesBackFromTheAddressItMakes() {
        RecipeForm form = new RecipeForm(
                List.of(new RecipeForm.Row("oak & birch leaves", "1,5", "bucket", "20")),
                List.of(new RecipeForm.Row("straw", "", "bucket", "")),
                Map.of("length", "100"),
                8);
        assertEquals(form, back(form.query()));
    }

    @Test
    void emptyRowsAreLeftOutAndMoreAreShownOnDemand() {
        Map<String, String> typed = Map.of("r0.material", "leaves", "r0.amount", "3", "r0.unit", "bucket", "rows", "4");
        assertEquals(1, RecipeForm.ofForm(typed::get).recipe().size());
        assertEquals(4, RecipeForm.ofForm(typed::get).shown().size());
        Map<String, String> more = Map.of("rows", "4", "more", "1");
        assertEquals(7, RecipeForm.ofForm(more::get).shown().size());
        assertTrue(RecipeForm.ofForm(more::get).empty());
    }

    @Test
    void whatIsNoRowIsLeftOut() {
        assertTrue(back("r=x&r=a~b&r=~~~&rows=9999").empty());
        assertEquals(40, back("rows=999").shown().size());
    }

    @Test
    void aNumberIsWrittenAsOneAndOtherTextStaysForTheReaderToRefuse() {
        RecipeForm form = new RecipeForm(
                List.of(
                        new RecipeForm.Row("leaves", "2,5", "bucket", "20"),
                        new RecipeForm.Row("straw", "some", "bucket", "")),
                List.of(),
                Map.of(),
                5);
        String document = new String(
                form.document("x", LocalDate.of(2026, 11, 1), Optional.empty(), false), StandardCharsets.UTF_8);
        assertTrue(document.contains("\"amount\" : 2.5"), document);
        assertTrue(document.contains("\"amount\" : \"some\""), document);
    }
}
