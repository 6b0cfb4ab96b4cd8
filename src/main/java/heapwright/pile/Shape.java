package heapwright.pile;

import java.util.List;

/** The objects of a pile document and the fields each may have; {@code docs/schema/pile.schema.json} says the same. */
enum Shape {
    PILE(
            "{\"heapwright\": \"pile/1\", \"name\": \"Heap by the shed\", \"asOf\": \"2026-11-21\"}",
            "heapwright",
            "name",
            "asOf",
            "built",
            "builtAbout",
            "place",
            "container",
            "recipe",
            "log",
            "struck",
            "advised",
            "keeper",
            "aim",
            "atHand",
            "measures",
            "materials",
            "limits",
            "case"),
    PLACE(
            "{\"latitude\": 60.2, \"climate\": \"inland\", \"settings\": [\"rats-about\"]}",
            "latitude",
            "climate",
            "altitude",
            "monthlyMeanC",
            "settings"),
    CONTAINER(
            "{\"kind\": \"slatted-bin\", \"height\": {\"value\": 1, \"unit\": \"m\"}}",
            "kind",
            "length",
            "width",
            "height",
            "volume",
            "cover",
            "base",
            "insulation",
            "rodentProof"),
    QUANTITY("{\"value\": 20, \"unit\": \"cm\"}", "value", "unit"),
    INGREDIENT(
            "{\"material\": \"leaves-mixed\", \"amount\": 8, \"unit\": \"bucket\"}",
            "material",
            "amount",
            "unit",
            "piece",
            "chopped",
            "date"),
    ENTRY(
            "{\"date\": \"2026-11-21\", \"seen\": [\"core-cold\"]}",
            "date",
            "seen",
            "notSeen",
            "measured",
            "done",
            "added",
            "tested",
            "note"),
    TESTED("{\"test\": \"bag\", \"result\": \"good\"}", "test", "result"),
    ADVISED(
            "{\"date\": \"2026-11-21\", \"step\": \"turn-fully\", \"look\": \"2026-11-29\"}",
            "date",
            "step",
            "amount",
            "look",
            "outcome",
            "told"),
    MEASURED(
            "{\"core\": {\"value\": 8, \"unit\": \"C\"}}",
            "core",
            "coreLowest",
            "coreDepth",
            "outdoor",
            "moisture",
            "bulkDensity",
            "ph",
            "height"),
    KEEPER("{\"minutes\": 30, \"lacks\": [\"fork\"]}", "minutes", "lacks"),
    AIM("{\"readyBy\": \"2027-04-20\", \"use\": \"vegetable-bed\"}", "readyBy", "use"),
    STOCK("{\"material\": \"leaves-mixed\", \"amount\": 8, \"unit\": \"bucket\"}", "material", "amount", "unit"),
    OWN_MATERIAL(
            "{\"id\": \"my-bark\", \"like\": \"bark-softwood\", \"moisture\": {\"value\": 50, \"unit\": \"%\"}}",
            "id", "like", "name", "carbonToNitrogen", "carbon", "nitrogen", "moisture", "density");

    private final String example;
    private final List<String> fields;

    Shape(String example, String... fields) {
        this.example = example;
        this.fields = List.of(fields);
    }

    String example() {
        return example;
    }

    List<String> fields() {
        return fields;
    }

    String listed() {
        return "the fields " + String.join(", ", fields);
    }
}
