package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The catalogue of texts")
class CatalogueTest {

    private static final Pattern PLACE = Pattern.compile("\\{\\d");

    private final ResourceBundle texts = ResourceBundle.getBundle("heapwright.messages", Locale.ROOT);

    @Test
    @DisplayName("quotes braces only where a text has places: a fixed sentence is shown as it stands")
    void fixedSentences() {
        assertTrue(keys(text -> !PLACE.matcher(text).find()).size() > 100);
        assertEquals(
                List.of(), keys(text -> !PLACE.matcher(text).find() && (text.contains("'{'") || text.contains("''"))));
    }

    @Test
    @DisplayName("has no lone straight apostrophe where a text has places: it would swallow them")
    void apostrophes() {
        assertTrue(keys(text -> PLACE.matcher(text).find()).size() > 100);
        assertEquals(
                List.of(),
                keys(text -> PLACE.matcher(text).find()
                        && text.replace("''", "")
                                .replace("'{'", "")
                                .replace("'}'", "")
                                .contains("'")));
    }

    private List<String> keys(Predicate<String> which) {
        return texts.keySet().stream()
                .filter(key -> which.test(texts.getString(key)))
                .sorted()
                .toList();
    }
}
