package heapwright.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.StreamSupport;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the finished jar says of the works of others that it carries. */
class PackagedJarIT {

    private static final String LICENSES = "META-INF/licenses/";

    /** A licence says who may do what with the work, or that all may; shorter than this is a hint at one. */
    private static final int SHORTEST_LICENCE = 1000;

    private JarFile jar;
    private Set<String> entries;

    @BeforeEach
    void open() throws IOException {
        jar = new JarFile("target/heapwright.jar");
        entries = new TreeSet<>(jar.stream().map(ZipEntry::getName).toList());
    }

    @AfterEach
    void close() throws IOException {
        jar.close();
    }

    @Test
    void everyBundledArtifactHasItsLicenceInside() throws IOException {
        Set<String> without = new TreeSet<>();
        for (JsonNode component : components()) {
            String name = component.path("name").asText();
            List<String> texts = entries.stream()
                    .filter(e -> e.startsWith(LICENSES + name + "/LICENSE") || isSharedText(component, e))
                    .toList();
            boolean told = false;
            for (String text : texts) {
                told |= read(text).length() > SHORTEST_LICENCE
                        && read(text).matches("(?is).*(licen[sc]e|permission).*");
            }
            if (!told) {
                without.add(name + " " + component.path("licenses"));
            }
        }
        assertEquals(Set.of(), without);
    }

    /** The text of a licence that many share stands once, under its SPDX id. */
    private static boolean isSharedText(JsonNode component, String entry) {
        return StreamSupport.stream(component.path("licenses").spliterator(), false)
                .map(l -> l.path("license").path("id").asText())
                .anyMatch(id -> entry.equals(LICENSES + id + ".txt"));
    }

    /** Maven's own marks inside the jar are the witness: most artifacts carry one. */
    @Test
    void theBillOfMaterialsNamesWhatIsInside() throws IOException {
        Map<String, String> billed = new TreeMap<>();
        for (JsonNode component : components()) {
            billed.put(
                    component.path("group").asText() + ":"
                            + component.path("name").asText(),
                    component.path("version").asText());
        }
        Map<String, String> inside = new TreeMap<>();
        for (String entry : entries) {
            if (entry.matches("META-INF/maven/.*/pom\\.properties")) {
                Properties mark = new Properties();
                try (InputStream in = jar.getInputStream(jar.getEntry(entry))) {
                    mark.load(in);
                }
                inside.put(
                        mark.getProperty("groupId") + ":" + mark.getProperty("artifactId"),
                        mark.getProperty("version"));
            }
        }
        assertTrue(inside.remove("heapwright:heapwright") != null && inside.size() > 40, inside.toString());
        Map<String, String> unbilled = new TreeMap<>(inside);
        unbilled.entrySet().removeAll(billed.entrySet());
        assertEquals(Map.of(), unbilled);
        assertTrue(billed.size() < inside.size() + 15, "more is billed than is inside: " + billed.keySet());
    }

    @Test
    void noCompilerIsInside() {
        assertFalse(entries.stream()
                .anyMatch(e -> e.startsWith("org/eclipse/jdt") || e.startsWith("com/github/javaparser")));
    }

    /** What we add has the time of the commit, not of the build, so that two builds are equal; the rest keeps its own. */
    @Test
    void whatWeAddHasOneTime() {
        Set<String> times = new TreeSet<>(jar.stream()
                .filter(e -> e.getName().matches("(heapwright/|META-INF/(sbom|licenses)/|META-INF/MANIFEST).*"))
                .map(e -> e.getTimeLocal().toString())
                .toList());
        assertEquals(1, times.size(), times.toString());
    }

    private List<JsonNode> components() throws IOException {
        JsonNode bill = new ObjectMapper().readTree(read("META-INF/sbom/heapwright.cdx.json"));
        assertEquals("CycloneDX", bill.path("bomFormat").asText());
        List<JsonNode> components = StreamSupport.stream(bill.path("components").spliterator(), false)
                .toList();
        assertTrue(components.size() > 40, components.size() + " components");
        return components;
    }

    private String read(String entry) throws IOException {
        try (InputStream in = jar.getInputStream(jar.getEntry(entry))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
