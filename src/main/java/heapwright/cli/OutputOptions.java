package heapwright.cli;

import heapwright.report.Catalogue;
import heapwright.report.Units;
import picocli.CommandLine.Option;

/** How an answer is written. */
final class OutputOptions {

    @Option(names = "--json", description = "Write the answer as JSON.")
    boolean json;

    @Option(
            names = "--units",
            paramLabel = "metric|us",
            defaultValue = "metric",
            description = "Amounts in metric or US units (default: ${DEFAULT-VALUE}).")
    Units units;

    @Option(
            names = "--lang",
            paramLabel = "LANG",
            defaultValue = "en",
            description = "Language of the answer; so far: en.")
    String language;

    Catalogue catalogue() {
        if (!"en".equals(language)) {
            throw new UsageFault("heapwright: --lang \"" + language
                    + "\": no texts in that language yet. Allowed: en. Example: --lang en");
        }
        return Catalogue.english();
    }
}
