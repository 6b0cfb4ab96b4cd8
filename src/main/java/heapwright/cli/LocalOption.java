package heapwright.cli;

import heapwright.knowledge.Inspection;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.LocalKnowledge;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** What a place adds to what is shipped. */
final class LocalOption {

    @Option(
            names = "--knowledge",
            paramLabel = "DIR",
            description = "Add the materials, measures, limits, rows of evidence and local notes of this folder.")
    Path folder;

    /** What has to be typed to ask of a file with the same folder. */
    String with(String file) {
        return folder == null ? file : "--knowledge " + folder + " " + file;
    }

    /**
     * What is shipped, with what the folder adds.
     *
     * @throws UsageFault when there is no such folder or it has faults; the message lists them all
     */
    Knowledge over(Knowledge shipped) {
        if (folder == null) {
            return shipped;
        }
        Inspection local = LocalKnowledge.inspect(Folders.there(folder, "--knowledge my-place"), shipped);
        if (local.faults().isEmpty() && local.counts().isEmpty()) {
            throw new UsageFault("heapwright: \"" + folder + "\" adds nothing. Allowed: tables and evidence in it."
                    + " Example: " + folder.resolve("tables").resolve("materials.json"));
        }
        return local.knowledge()
                .orElseThrow(() -> new UsageFault(
                        "heapwright: \"" + folder + "\" cannot be added:\n" + String.join("\n", local.faults())));
    }
}
