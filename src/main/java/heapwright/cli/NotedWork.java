package heapwright.cli;

import heapwright.phrase.NumberPhrase;
import heapwright.pile.TypedEntry;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** Work and additions as they are told at the command line. */
final class NotedWork {

    /** How much, of which measure, of what: "1½ bucket grass-clippings". */
    private static final Pattern ADDED = Pattern.compile(
            "([0-9.,/ \u00bd\u00bc\u00be\u2153\u2154]*[0-9\u00bd\u00bc\u00be\u2153\u2154])\\s*(\\S+)\\s+(.+)");

    @Option(names = "--done", paramLabel = "ACTION", description = "What you did, such as turned-fully.")
    private List<String> done = List.of();

    @Option(
            names = "--added",
            paramLabel = "\"AMOUNT UNIT MATERIAL\"",
            description = "What you added, such as \"4 wheelbarrow leaves-mixed\".")
    private List<String> added = List.of();

    @Option(
            names = "--tested",
            paramLabel = "TEST=RESULT",
            description = "How a home test came out, such as bag=good or peas=poor.")
    private List<String> tested = List.of();

    /**
     * How home tests came out, the result by the test.
     *
     * @throws UsageFault where one of them is not said; the names are looked at by the reader of the document
     */
    Map<String, String> tested() {
        Map<String, String> all = new LinkedHashMap<>();
        tested.stream()
                .flatMap(t -> List.of(t.split(",")).stream())
                .map(t -> t.strip().split("\\s*=\\s*"))
                .forEach(t -> {
                    if (t.length != 2) {
                        throw new UsageFault("heapwright: --tested: found \"" + String.join("=", t)
                                + "\". Allowed: a home test and how it came out. Example: --tested bag=good");
                    }
                    all.put(t[0], t[1]);
                });
        return all;
    }

    List<String> done() {
        return done.stream()
                .flatMap(d -> List.of(d.split(",")).stream())
                .map(String::strip)
                .toList();
    }

    /**
     * What was added.
     *
     * @throws UsageFault where amount, unit or material is missing: none is guessed
     */
    List<TypedEntry.Added> added() {
        return added.stream().map(NotedWork::one).toList();
    }

    private static TypedEntry.Added one(String said) {
        Matcher parts = ADDED.matcher(said.strip());
        OptionalDouble amount = parts.matches() ? NumberPhrase.number(parts.group(1)) : OptionalDouble.empty();
        if (amount.isEmpty()) {
            throw new UsageFault(
                    "heapwright: --added: found \"" + said + "\". Allowed: how much, of which measure, and of"
                            + " what. Example: --added \"4 wheelbarrow leaves-mixed\"");
        }
        return new TypedEntry.Added(parts.group(3).strip(), amount.getAsDouble(), parts.group(2));
    }
}
