package heapwright.cli;

import heapwright.report.Units;
import picocli.CommandLine.Option;

/** The units in which a command that only tells shows its figures. */
final class ShownUnits {

    @Option(
            names = "--units",
            paramLabel = "metric|us",
            defaultValue = "metric",
            description = "Figures in metric or US units (default: ${DEFAULT-VALUE}).")
    private Units units;

    Units units() {
        return units;
    }
}
