package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import heapwright.advice.engine.RuleInfo;
import heapwright.report.Catalogue;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every text of the pages comes from the catalogue or from a knowledge table. The catalogue's texts are set in brackets
 * here; what stands outside the brackets must be a table's, a number with its unit, or a date.
 */
@NeedsChromium
@TestInstance(Lifecycle.PER_CLASS)
class LanguageIT {

    private static final char OPEN = '⟦';
    private static final char CLOSE = '⟧';

    private static final List<String> PAGES = List.of(
            "/",
            "/checkup?y=smells-sour.core-cold&core=x",
            "/checkup/blank",
            "/result?y=smells-sour.soggy.core-cold&n=smells-ammonia&built=2&out=-3",
            "/result?y=smoke",
            "/why",
            "/why/example",
            "/build",
            "/build?r=leaves~10~bucket~&r=grass~16~bucket~20&h=cardboard~~bucket~",
            "/piles",
            "/piles/heap-by-the-birches",
            "/piles/heap-by-the-birches/notes",
            "/piles/heap-by-the-birches/edit",
            "/piles/heap-by-the-birches/heat",
            "/piles/heap-by-the-birches/ready",
            "/piles/heap-by-the-birches/season",
            "/season",
            "/open",
            "/knowledge?q=wet",
            "/knowledge/causes/too-wet",
            "/knowledge/remedies/add-urea",
            "/knowledge/materials/leaves-mixed",
            "/knowledge/sources",
            "/settings?saved=1",
            "/nowhere");

    /** Numbers with units, days and months, as the formats of the language write them. */
    private static final Pattern FORMATTED =
            Pattern.compile("\\b(Mon|Tue|Wed|Thu|Fri|Sat|Sun|Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*\\b"
                    + "|\\b(kg|g|L|mL|cm|m|°C|pH)\\b|m[²³]|°C");

    /** Every text of a page that a person can meet, read or heard. */
    private static final String TEXTS = """
            () => {
              const texts = [document.title];
              const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
              while (walker.nextNode()) texts.push(walker.currentNode.data);
              for (const e of document.querySelectorAll('[aria-label],[title],[placeholder],[alt]'))
                for (const a of ['aria-label', 'title', 'placeholder', 'alt'])
                  if (e.getAttribute(a)) texts.push(e.getAttribute(a));
              return texts;
            }
            """;

    private Path folder;

    private TestServer server;
    private Chrome chrome;
    private List<String> tables;

    @BeforeAll
    void start(@TempDir Path given) throws IOException {
        folder = given;
        TestServer.plantExample(folder);
        server = TestServer.over(folder, new Catalogue(new Bracketed(), Locale.ENGLISH));
        chrome = new Chrome();
        tables = tables();
    }

    @AfterAll
    void stop() {
        chrome.close();
        server.close();
    }

    @Test
    void noTextIsHardWired() {
        List<String> hardWired = new ArrayList<>();
        try (BrowserContext visitor = chrome.visitor(Chrome.PHONE, ColorScheme.LIGHT, true)) {
            Page page = visitor.newPage();
            for (String path : PAGES) {
                page.navigate(server.at(path));
                Set<String> texts = new HashSet<>();
                ((List<?>) page.evaluate(TEXTS)).forEach(text -> texts.add((String) text));
                for (String text : texts) {
                    String rest = rest(text);
                    if (rest.codePoints().anyMatch(Character::isLetter)) {
                        hardWired.add(path + ": " + rest.strip());
                    }
                }
            }
        }
        assertEquals(List.of(), hardWired);
    }

    private String rest(String text) {
        StringBuilder outside = new StringBuilder();
        int depth = 0;
        for (char c : text.toCharArray()) {
            if (c == OPEN) {
                depth++;
            } else if (c == CLOSE) {
                depth--;
                outside.append(' ');
            } else if (depth == 0) {
                outside.append(c);
            }
        }
        String rest = outside.toString();
        for (String known : tables) {
            if (!rest.codePoints().anyMatch(Character::isLetter)) {
                return "";
            }
            rest = rest.replace(known, " ");
        }
        return FORMATTED.matcher(rest).replaceAll(" ");
    }

    /** All texts of the tables, of the rules and of the piles shown; the longest first. */
    private List<String> tables() throws IOException {
        Set<String> texts = new HashSet<>();
        for (String table : List.of(
                "signs",
                "causes",
                "dangers",
                "keep-out-classes",
                "remedies",
                "cautions",
                "limits",
                "materials",
                "measures",
                "heat-rules",
                "heat-equations",
                "survivors",
                "home-tests",
                "uses",
                "waits",
                "ripeness",
                "season",
                "sources")) {
            collect(tree("/heapwright/tables/" + table + ".json"), texts);
        }
        collect(tree("/heapwright/web/example.json"), texts);
        for (RuleInfo rule : server.site().advisor().rules()) {
            texts.addAll(List.of(rule.id(), rule.rationale(), rule.name()));
        }
        texts.add(folder.toString());
        Set<String> forms = new HashSet<>(texts);
        for (String text : texts) {
            forms.add(text.toLowerCase(Locale.ROOT));
            forms.add(text.substring(0, Math.min(1, text.length())).toUpperCase(Locale.ROOT)
                    + text.substring(Math.min(1, text.length())));
            forms.add(text.replaceFirst("\\.$", ""));
        }
        return forms.stream()
                .filter(text -> text.length() > 2)
                .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    private static JsonNode tree(String resource) throws IOException {
        try (InputStream in = LanguageIT.class.getResourceAsStream(resource)) {
            return new ObjectMapper().readTree(in);
        }
    }

    private static void collect(JsonNode node, Set<String> texts) {
        if (node.isTextual()) {
            texts.add(node.asText());
        }
        node.forEach(child -> collect(child, texts));
    }

    /** The English texts in brackets. */
    private static final class Bracketed extends ResourceBundle {

        private final ResourceBundle english = ResourceBundle.getBundle("heapwright.messages", Locale.ROOT);

        @Override
        protected Object handleGetObject(String key) {
            return english.containsKey(key) ? OPEN + english.getString(key) + CLOSE : null;
        }

        @Override
        public Enumeration<String> getKeys() {
            return english.getKeys();
        }
    }
}
