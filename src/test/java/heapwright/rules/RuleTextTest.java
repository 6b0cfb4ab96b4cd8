package heapwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.author.RuleCheck;
import heapwright.author.RuleFile;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Sign;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The text of the rules")
class RuleTextTest {

    private static final Set<String> SOURCES =
            KnowledgeReader.packed().sources().keySet();

    /** Invented: no rule of ours. */
    private static final String RULES = """
            package heapwright.rules.derive;

            import heapwright.advice.fact.*;
            import heapwright.knowledge.*;

            // When it is soggy, then the state is named: wet.
            rule "wet: it is soggy"
                @id( "DERIVE-998" )
                @strength( "strong" )
                @evidence( "judgement" )
                @source( "JUDGEMENT" )
                @rationale( "Soggy stuff holds free water." )
                agenda-group "derive"
            when
                Seen( sign == Sign.SOGGY )
            then
                insert( new Holds( Condition.WET ) );
            end
            """;

    @Test
    @DisplayName("keeps the house rules and names only what there is")
    void shipped() {
        List<String> faults = new ArrayList<>();
        List<RuleFile> files = RuleFile.below(Path.of("rules"), faults);
        assertTrue(files.size() > 40, "only " + files.size() + " files");
        faults.addAll(new RuleCheck(SOURCES).faults(files));
        assertEquals("", String.join("\n", faults));
    }

    @Test
    @DisplayName("is at peace with a rule like the others")
    void plain() {
        assertEquals(List.of(), faults("derive/water.drl", RULES));
    }

    @ParameterizedTest
    @DisplayName("is refused with its place, what was found and what is allowed")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            package heapwright.rules.derive; | package heapwright.rules.guard; | derive/water.drl, line 1: the package is not that of its folder
            import heapwright.knowledge.*;   | import java.net.*;              | found "import java.net.*;". Allowed: imports of
            wet: it is soggy                 | wet and soggy                   | line 7, "wet and soggy": its name is not "problem: answer"
            // When it is soggy, then        | // It is soggy, so              | the line above it does not say what it does
            @id( "DERIVE-998" )              | @id( "GUARD-998" )              | @id: found "GUARD-998". Allowed: its pass and a number
            @id( "DERIVE-998" )              | ``                              | @id is missing
            @strength( "strong" )            | @strength( "stong" )            | @strength: found "stong". Allowed: one of slight, fair, strong, decisive. Did you mean "strong"?
            @evidence( "judgement" )         | @evidence( "guess" )            | @evidence: found "guess". Allowed: one of measured,
            @source( "JUDGEMENT" )           | @source( "JUDGMENT" )           | @source: found "JUDGMENT". Allowed: a key of sources.json. Did you mean "JUDGEMENT"?
            free water.                      | free water                      | Allowed: the mechanism in one sentence
            free water.                      | free water. It does.            | Allowed: the mechanism in one sentence
            agenda-group "derive"            | agenda-group "guard"            | does not run in the pass of its folder
            Sign.SOGGY                       | Sign.SOGY                       | found Sign.SOGY. Allowed: one of the # constants of Sign. Did you mean "Sign.SOGGY"?
            Condition.WET )                  | Condition.WETT )                | found Condition.WETT.
            Seen( sign                       | Sees( sign                      | found the fact Sees. Allowed: one of the
            Seen( sign                       | Sees( sign                      | Did you mean "Seen"?
            Seen( sign                       | Seen( sing                      | found "sing" of Seen. Allowed: daysAgo,
            Seen( sign                       | not Seen( sing                  | Did you mean "sign"?
            new Holds(                       | new Hold(                       | found the fact Hold. Allowed: one of the
            sign == Sign.SOGGY               | sign == Sign.SOGGY, daysAgo < 3 | found a figure. Allowed: limits
            sign == Sign.SOGGY               | sign.id() == "soggy"            | found a text in quotes
            insert( new Holds(               | update( new Holds(              | found "update", by which rules come to depend on order
            insert( new Holds(               | insert( some( new Holds(        | after then. Allowed: only insert.
            new Holds( Condition.WET )       | new Speaks( $row )              | in weigh, and only there, rows of evidence are joined
            Seen( sign == Sign.SOGGY )       | HoldsNot( condition == Condition.DRY ) | must be one for evidence alone
            Seen( sign == Sign.SOGGY )       | Holds( condition == Condition.SLIMY_AFTER_FAT ) | which is a name for evidence alone
            Seen( sign == Sign.SOGGY )       | Reads( reading == Reading.MOISTURE, surelyAbove( $edge ) ) | weighs a quantity at a sharp edge
            Seen( sign == Sign.SOGGY )       | Placed( reading == Reading.PH, side == Side.SURELY_ABOVE, limit == Limit.FREEZING ) | nothing compares ph with freezing
            """)
    void refused(String there, String instead, String told) {
        String message = told.replace("#", String.valueOf(Sign.values().length));
        assertTrue(RULES.contains(there), there);
        List<String> faults = faults("derive/water.drl", RULES.replace(there, instead));
        assertTrue(faults.stream().anyMatch(f -> f.contains(message)), message + " is not in " + faults);
        assertTrue(faults.stream().allMatch(f -> f.startsWith("derive/water.drl")), faults.toString());
    }

    @ParameterizedTest(name = "has no {0}")
    @ValueSource(
            strings = {
                "salience",
                "no-loop",
                "lock-on-active",
                "eval",
                "function",
                "global",
                "mvel",
                "dialect",
                "update",
                "modify",
                "retract",
                "delete",
                "insertLogical",
                "accumulate",
                "System",
                "drools"
            })
    @DisplayName("has no construct that makes rules depend on order or state")
    void forbidden(String construct) {
        List<String> faults = faults("derive/water.drl", RULES.replace("when\n", "    " + construct + "\nwhen\n"));
        assertTrue(faults.stream().anyMatch(f -> f.contains("found \"" + construct + "\"")), faults.toString());
    }

    @Test
    @DisplayName("has no degrees where only yes and no are known, and no late names outside of derive")
    void otherPasses() {
        String guard = RULES.replace("derive", "guard").replace("DERIVE", "GUARD");
        assertEquals(List.of(), faults("guard/water.drl", guard));
        assertTrue(faults(
                        "guard/water.drl",
                        guard.replace(
                                "Seen( sign == Sign.SOGGY )",
                                "Placed( reading == Reading.PH, side == Side.SURELY_ABOVE, limit == Limit.PH_AMMONIA )"))
                .get(0)
                .contains("found Placed, which has a degree"));
        assertTrue(faults(
                        "guard/water.drl",
                        guard.replace("Seen( sign == Sign.SOGGY )", "HoldsNot( condition == Condition.DRY )"))
                .get(0)
                .contains("found HoldsNot"));
    }

    @Test
    @DisplayName("uses every id once")
    void twice() {
        String again = RULES + "\n" + RULES.substring(RULES.indexOf("// When"));
        assertTrue(faults("derive/water.drl", again).toString().contains("which derive/water.drl, line 7"));
    }

    @Test
    @DisplayName("reads as rules from end to end, in files that are read at one sitting")
    void wholeFiles() {
        assertTrue(faults("derive/water.drl", RULES.replace("\nend\n", "\n"))
                .toString()
                .contains("1 rules begin and 0 can be read to their end"));
        assertTrue(
                faults("derive/water.drl", RULES + "\n".repeat(300)).toString().contains("Allowed: 300"));
        assertTrue(faults("derive/water.drl", RULES.replace("then\n    insert", "    insert"))
                .toString()
                .contains("says nothing after a line then"));
    }

    private static List<String> faults(String name, String text) {
        return new RuleCheck(SOURCES).faults(List.of(RuleFile.of(name, text)));
    }
}
