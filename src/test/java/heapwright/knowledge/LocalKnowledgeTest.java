package heapwright.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What a place adds")
class LocalKnowledgeTest {

    private static final Path TEMPLATE = Path.of("docs", "templates", "my-place");
    private static final Knowledge SHIPPED = KnowledgeReader.packed();

    @TempDir
    private Path folder;

    private Inspection inspect() {
        return LocalKnowledge.inspect(folder, SHIPPED);
    }

    private void copyTemplate() throws IOException {
        try (Stream<Path> files = Files.walk(TEMPLATE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = folder.resolve(TEMPLATE.relativize(file));
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
    }

    private void write(String name, String text) throws IOException {
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), text);
    }

    private void refuses(String message) {
        Inspection inspection = inspect();
        assertTrue(
                inspection.faults().stream().anyMatch(f -> f.contains(message)),
                message + " is not in " + inspection.faults());
        assertTrue(inspection.knowledge().isEmpty());
    }

    @Test
    @DisplayName("is laid over what is shipped, which else stays as it is")
    void template() {
        Inspection inspection = LocalKnowledge.inspect(TEMPLATE, SHIPPED);
        assertEquals(List.of(), inspection.faults());
        Knowledge local = inspection.knowledge().orElseThrow();
        assertEquals("my-hop-bines", local.material("Hop bines").orElseThrow().id());
        assertEquals(SHIPPED.materials().size() + 1, local.materials().size());
        assertEquals(14, local.vocabulary().measures().get("bucket"));
        assertEquals(20, local.vocabulary().measures().get("creel"));
        assertEquals(10, SHIPPED.vocabulary().measures().get("bucket"));
        assertEquals(1, local.limits().get(Limit.VOLUME_SMALL).value());
        assertEquals(SHIPPED.evidence().size() + 1, local.evidence().size());
        CautionInfo caution = local.cautions().get(Caution.KITCHEN_WASTE_RULES);
        assertTrue(caution.localNote().orElseThrow().startsWith("Our council"));
        assertEquals(
                caution.localNote().orElseThrow() + " "
                        + SHIPPED.cautions()
                                .get(Caution.KITCHEN_WASTE_RULES)
                                .localRules()
                                .orElseThrow(),
                caution.localRules().orElseThrow());
        assertEquals(SHIPPED.remedies(), local.remedies());
        assertEquals(SHIPPED.causes(), local.causes());
        assertEquals(SHIPPED.dangers(), local.dangers());
    }

    @ParameterizedTest
    @DisplayName(
            "is refused, with the place, where it clashes with what is shipped or would make less of what keeps safe")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            tables/materials.json   | my-hop-bines          | sawdust           | tables/materials.json, line 3, sawdust: a shipped row has this id. Allowed: another id, or "replaces": true
            tables/materials.json   | "id": "my-hop-bines"  | "id": "mine", "replaces": true | mine: says "replaces": true, and no shipped row has this id
            tables/materials.json   | "id": "my-hop-bines"  | "id": "timber-treated", "replaces": true | timber-treated: it stays out of a home pile in every place
            tables/materials.json   | "hop bines"           | "sawdust"         | the name "sawdust" is that of sawdust too
            tables/materials.json   | "MY-SCALES"           | "MY-SCALE"        | found the source "MY-SCALE". Allowed: a key of sources.json. Did you mean "MY-SCALES"?
            tables/measures.json    | "replaces": true,     | ``                | tables/measures.json, line 3, bucket: a shipped row has this id
            tables/measures.json    | "litres": 20          | "litres": 0       | creel: holds 0.0 litres. Allowed: more than 0
            tables/measures.json    | "garden"              | "pail"            | ``
            tables/limits.json      | "highest": 1.2        | "highest": 50     | found 0.3 to 50.0 m3. Allowed: within 0.3 to 1.2 m3
            tables/limits.json      | "value": 1            | "value": 1.5      | value 1.5 is outside 0.3 to 1.2
            tables/limits.json      | "replaces": true,     | ``                | volume-small: a shipped row has this id
            tables/sources.json     | "key": "MY-SCALES"    | "key": "RYNK92", "replaces": true | a shipped source says the same in every place
            tables/local-notes.json | kitchen-waste-rules   | kitchen-waste-rule | Did you mean "kitchen-waste-rules"?
            tables/local-notes.json | "MY-COUNCIL"          | "MY-TOWN"         | my-council-kitchen-waste: found the source "MY-TOWN"
            tables/local-notes.json | Our council           | Our \\u001b[31mcouncil | /text: found a control character
            evidence/too-wet.json   | LOCAL-101             | PLACE-101         | an id is WEIGH- or LOCAL- and a number
            evidence/too-wet.json   | LOCAL-101             | WEIGH-501         | WEIGH-501: a shipped row has this id
            evidence/too-wet.json   | "id": "LOCAL-101"     | "id": "WEIGH-605", "replaces": true | WEIGH-605: it is the id of a row on matted
            evidence/too-wet.json   | low-wet-ground        | soggy             | ``
            """)
    void clashes(String file, String there, String instead, String message) throws IOException {
        copyTemplate();
        Path changed = folder.resolve(file);
        Files.writeString(changed, Files.readString(changed).replace(there, instead));
        if (message.isEmpty()) {
            assertEquals(List.of(), inspect().faults());
        } else {
            refuses(message);
        }
    }

    @Test
    @DisplayName("never speaks against a danger, nor in the place of what speaks for one")
    void dangers() throws IOException {
        String row =
                "{\"fire-risk\": [{\"id\": \"LOCAL-1001\", \"speaks\": \"%s\", \"strength\": \"slight\", \"witness\":"
                        + " \"look\", \"when\": {\"seen\": [\"mushrooms\"]}, \"because\": \"So it is.\", \"source\": \"JUDGEMENT\","
                        + " \"known\": \"judgement\"}]}";
        write("evidence/fire-risk.json", row.formatted("for"));
        assertEquals(List.of(), inspect().faults());
        write("evidence/fire-risk.json", row.formatted("against"));
        refuses("it is on a danger or on what must not be used");
        String shipped = SHIPPED.evidence().stream()
                .filter(r -> r.cause() == Cause.FIRE_RISK)
                .findFirst()
                .orElseThrow()
                .id();
        write(
                "evidence/fire-risk.json",
                row.formatted("for")
                        .replace("\"id\": \"LOCAL-1001\"", "\"id\": \"" + shipped + "\", \"replaces\": true"));
        refuses("it is on a danger or on what must not be used");
    }

    @ParameterizedTest
    @DisplayName("is data alone: rules, programs and other tables are refused, texts for people are not")
    @ValueSource(
            strings = {
                "water.drl",
                "derive/water.drl",
                "tables/water.drl",
                "evidence/water.drl",
                "run.sh",
                "Local.class",
                "tables/remedies.json",
                "tables/causes.json",
                "tables/weights.json",
                "tables/sub/materials.json",
                "evidence/wet.json"
            })
    void dataAlone(String name) throws IOException {
        copyTemplate();
        write(name, "rule \"wet: always\" when then System.exit( 9 ); end");
        Inspection inspection = inspect();
        assertEquals(1, inspection.faults().size(), inspection.faults().toString());
        assertEquals(
                name.endsWith(".drl") && !name.startsWith("derive"),
                inspection.faults().get(0).contains("rules need a build"));
        assertTrue(inspection.faults().get(0).contains("Allowed: "));
    }

    @Test
    @DisplayName("is asked for again where a folder of other things is named")
    void anotherFolder() throws IOException {
        for (int i = 0; i < 30; i++) {
            write("letter-" + i + ".odt", "");
        }
        List<String> faults = inspect().faults();
        assertEquals(11, faults.size());
        assertEquals("found 20 more files and folders of the kind; is it the right folder?", faults.get(10));
    }

    @Test
    @DisplayName("may have texts for people beside it")
    void texts() throws IOException {
        copyTemplate();
        write("README.md", "ours");
        write("tables/notes.txt", "ours");
        assertEquals(List.of(), inspect().faults());
    }

    @Test
    @DisplayName("is read in its folder and nowhere else, and never without end")
    void hostile() throws IOException {
        Path outside = Files.createTempDirectory("outside");
        Files.writeString(outside.resolve("secret.json"), "{\"materials\": [\"secret\"]}");
        Files.createDirectories(folder.resolve("tables"));
        Files.createSymbolicLink(folder.resolve("tables/materials.json"), outside.resolve("secret.json"));
        Files.createSymbolicLink(folder.resolve("evidence"), outside);
        Files.createSymbolicLink(folder.resolve("tables/sources.json"), Path.of("/dev/zero"));
        Files.write(folder.resolve("tables/measures.json"), new byte[KnowledgeFolder.LARGEST + 1]);
        write("tables/limits.json", "{\"limits\": " + "[{\"id\": ".repeat(50_000));
        write(
                "tables/local-notes.json",
                "{\"local-notes\": [{\"id\": \"../../../etc/passwd\", \"cautions\": [\"../x\"]}]}");
        List<String> faults = inspect().faults();
        for (String part : List.of(
                "tables/materials.json: cannot be read: it leads out of the folder",
                "tables/sources.json: cannot be read: it leads out of the folder",
                "tables/measures.json: cannot be read: it is larger than 4 MiB",
                "tables/limits.json, line 1: ",
                "/cautions: found \"../x\"")) {
            assertTrue(faults.stream().anyMatch(f -> f.contains(part)), part + " is not in " + faults);
        }
        assertFalse(faults.toString().contains("secret"), faults.toString());
    }

    @Test
    @DisplayName("takes a link that stays inside")
    void linkInside() throws IOException {
        copyTemplate();
        Files.move(folder.resolve("tables/sources.json"), folder.resolve("tables/all.txt"));
        Files.createSymbolicLink(folder.resolve("tables/sources.json"), Path.of("all.txt"));
        assertEquals(List.of(), inspect().faults());
    }
}
