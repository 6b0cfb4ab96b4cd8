package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("heapwright ask")
class AskCommandTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path folder;

    @Test
    @DisplayName("notes what was said, what was denied, the age and the size in the person's own words")
    void ownWords() throws IOException {
        JsonNode pile = saved("soggy, no ammonia, sour smell", "10 weeks", "a bin", "a tumbler", "3 ft", "s");
        JsonNode entry = pile.path("log").get(0);
        assertEquals("[\"smells-sour\",\"soggy\"]", sorted(entry.path("seen")));
        assertEquals("[\"smells-ammonia\"]", sorted(entry.path("notSeen")));
        assertEquals(0.9144, pile.path("container").path("length").path("value").asDouble(), 1e-6);
        assertTrue(pile.has("built"), pile.toString());
        assertEquals("tumbler", pile.path("container").path("kind").asText());
        assertTrue(err().contains("from “a bin” which kind"), err());
    }

    @Test
    @DisplayName("never takes a yes for a sign, and says what it did not understand")
    void yes() throws IOException {
        JsonNode pile = saved("y", "", "", "", "", "s");
        assertEquals(0, pile.path("log").findValues("seen").size(), pile.toString());
        assertTrue(err().contains("I do not know “y”"), err());
    }

    @Test
    @DisplayName("takes a yes, a no or the number where it asks whether one thing is meant")
    void one() throws IOException {
        for (String yes : new String[] {"y", "YES", "1"}) {
            JsonNode pile = saved("stopped heating after two weeks", yes, "", "", "", "", "s");
            assertTrue(err().contains("do you mean this?"), err());
            assertEquals(
                    "[\"heated-then-cooled\"]", sorted(pile.path("log").get(0).path("seen")), yes);
        }
        for (String no : new String[] {"n", "no", ""}) {
            JsonNode pile = saved("stopped heating after two weeks", no, "", "", "", "", "s");
            assertEquals(0, pile.path("log").findValues("seen").size(), no + " " + pile);
        }
    }

    @Test
    @DisplayName("lets the person choose where the words mean several things, and takes none without a word")
    void several() throws IOException {
        JsonNode none = saved("cold", "", "", "", "", "s");
        assertEquals(0, none.path("log").findValues("seen").size(), none.toString());
        assertTrue(err().contains("“cold” can mean more than one thing"), err());
        JsonNode first = saved("cold", "9", "1", "", "", "", "s");
        assertTrue(err().contains("“9” is not among 1 to"), err());
        assertEquals(1, first.path("log").get(0).path("seen").size(), first.toString());
    }

    @Test
    @DisplayName("asks again for an age or a size that it cannot find, and says why")
    void again() throws IOException {
        JsonNode pile = saved("soggy", "soon", "40 years", "since October", "", "huge", "1 km", "90 cm", "s");
        for (String said : new String[] {"soon", "40 years", "huge", "1 km"}) {
            assertTrue(err().contains("in “" + said + "”"), err());
        }
        assertFalse(pile.path("built").asText().isEmpty());
    }

    @Test
    @DisplayName("takes the age of leaf mould and of a dry toilet, in years")
    void years() throws IOException {
        for (String age : new String[] {"two and a half years", "18 months", "about ten years"}) {
            assertTrue(saved("dust-dry", age, "", "", "s").has("built"), age + ": " + err());
        }
    }

    @Test
    @DisplayName("tells what it can make nothing of in a phrase, and lets it be said in other words")
    void left() throws IOException {
        JsonNode pile = saved("soggy gribbles", "1", "slimy", "", "", "", "s");
        assertEquals("[\"slimy\",\"soggy\"]", sorted(pile.path("log").get(0).path("seen")));
        assertTrue(err().contains("what to make of “gribbles”"), err());
        assertTrue(err().contains("Put it in other words"), err());
        JsonNode none = saved("soggy gribbles", "", "", "", "", "", "s");
        assertEquals(0, none.path("log").findValues("seen").size(), none.toString());
    }

    @Test
    @DisplayName("hears each thing of a line by itself, and asks before it takes somebody to be hurt")
    void partsAndHarm() throws IOException {
        JsonNode both = saved("smells of vomit and its dripping wet", "", "", "", "s");
        assertEquals(
                "[\"smells-sour\",\"soggy\"]", sorted(both.path("log").get(0).path("seen")));
        JsonNode harm = saved("my wife feels unwell", "1", "", "", "", "s");
        assertEquals("[\"someone-dizzy\"]", sorted(harm.path("log").get(0).path("seen")));
        assertTrue(err().contains("1  Somebody feels dizzy"), err());
    }

    @Test
    @DisplayName("hears in the first line how old it is, and asks where the time may be that of a sign")
    void ageAmongSigns() throws IOException {
        for (String age : new String[] {"three weeks old", "it's 3 weeks old", "built three weeks ago"}) {
            JsonNode pile = saved("soggy, " + age, "", "", "s");
            assertTrue(pile.has("built"), age + " " + err());
            assertFalse(err().contains("How old is it?"), age);
            assertFalse(err().contains("asbestos"), age);
        }
        assertTrue(saved("soggy, 3 weeks", "y", "", "", "s").has("built"));
        assertTrue(err().contains("Is the pile “3 weeks” old?"), err());
        assertFalse(saved("soggy, 3 weeks", "", "", "", "", "", "s").has("built"));
        assertFalse(saved("soggy, forty years old", "", "", "", "", "s").has("built"));
    }

    @Test
    @DisplayName("takes it in their own words that a person does not know, and stops at any question")
    void dontKnow() throws IOException {
        for (String said : new String[] {"dunno", "I don't know.", "I don\u2019t know", "no idea", "Not sure", "?"}) {
            assertFalse(saved("soggy", said, said, said, "s").has("built"), said);
            assertFalse(err().contains(said + "\u201d"), err());
        }
        for (String stop : new String[] {"s", "q", "Quit", "stop"}) {
            saved(stop);
            assertFalse(err().contains("How old"), err());
            saved("soggy", stop);
            assertFalse(err().contains("What holds it"), err());
        }
    }

    @Test
    @DisplayName("words a choice as a no where the phrase says no")
    void deniedChoice() throws IOException {
        JsonNode pile = saved("not soggy at the top", "1", "", "", "", "s");
        assertEquals("[\"soggy\"]", sorted(pile.path("log").get(0).path("notSeen")));
        assertTrue(err().contains("1  It is not soggy"), err());
    }

    private static String sorted(JsonNode list) {
        return java.util.stream.StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::toString)
                .sorted()
                .toList()
                .toString()
                .replace(" ", "");
    }

    private JsonNode saved(String... lines) throws IOException {
        out.reset();
        err.reset();
        Path file = folder.resolve("pile" + System.nanoTime() + ".json");
        int code = new Program(new Terminal(
                        new ByteArrayInputStream((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8)),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false))
                .run("ask", "--save", file.toString());
        assertEquals(Program.OK, code, err());
        return new ObjectMapper().readTree(file.toFile());
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
