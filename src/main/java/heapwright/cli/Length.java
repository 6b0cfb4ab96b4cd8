package heapwright.cli;

import picocli.CommandLine.Option;

/** How much of an answer is written. */
final class Length {

    @Option(names = "--full", description = "Write all of it, not just the first page.")
    boolean full;
}
