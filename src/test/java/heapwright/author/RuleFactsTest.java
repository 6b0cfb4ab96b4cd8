package heapwright.author;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The facts that rules may name")
class RuleFactsTest {

    private static final Path FACTS = Path.of("src", "main", "java", "heapwright", "advice", "fact");

    @Test
    @DisplayName("are all those that there are")
    void all() throws IOException {
        try (Stream<Path> files = Files.list(FACTS)) {
            List<String> facts = files.map(f -> f.getFileName().toString().replace(".java", ""))
                    .filter(name -> !name.equals("package-info"))
                    .filter(name -> !kind(name).isEnum())
                    .sorted()
                    .toList();
            assertEquals(facts, RuleFacts.NAMES);
        }
    }

    private static Class<?> kind(String name) {
        try {
            return Class.forName("heapwright.advice.fact." + name);
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    @DisplayName("are matched by their fields, bound or compared, and by what they answer")
    void fields() {
        String sound = """
                when
                    $seen : Seen( sign == Sign.SOGGY )
                    LimitIs( limit == Limit.PH_ACID, $edge : value )
                    exists Reads( reading == Reading.PH, surelyBelow( $edge ) )
                    not Proposes( remedy not in ( Remedy.ADD_WATER ) )
                    Planned( digsIn(), $remedy : remedy )
                then
                    insert( new Holds( Condition.WET ) );
                """;
        assertEquals(Set.of(), new RuleFacts(sound).unknown());
        assertEquals(
                1,
                new RuleFacts(sound.replace("$edge : value", "$edge : figure"))
                        .unknown()
                        .size());
        assertEquals(
                1,
                new RuleFacts(sound.replace("surelyBelow(", "surelyUnder("))
                        .unknown()
                        .size());
        assertEquals(
                1,
                new RuleFacts(sound.replace("remedy not in", "remedies not in"))
                        .unknown()
                        .size());
        assertEquals(
                1, new RuleFacts(sound.replace("digsIn()", "digs()")).unknown().size());
    }
}
