package heapwright.cli;

import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.util.stream.Collectors;

/** Opens the pile document that a command names; "-" is standard input. */
final class PileFile {

    private static final String STANDARD_INPUT = "-";

    private final Terminal terminal;
    private final Knowledge knowledge;

    PileFile(Terminal terminal, Knowledge knowledge) {
        this.terminal = terminal;
        this.knowledge = knowledge;
    }

    /**
     * Reads a pile.
     *
     * @throws UsageFault when the file cannot be opened or has problems; the message lists them all
     */
    Pile read(String name) {
        boolean piped = STANDARD_INPUT.equals(name);
        String shown = piped ? "standard input" : name;
        ReadResult result = new PileReader(knowledge.vocabulary()).read(shown, bytes(name, piped));
        if (!result.problems().isEmpty()) {
            throw new UsageFault(
                    result.problems().stream().map(Problem::message).collect(Collectors.joining("\n\n")));
        }
        return result.pile().orElseThrow();
    }

    private byte[] bytes(String name, boolean piped) {
        try (InputStream in = piped ? terminal.in() : Files.newInputStream(FileNames.path(name))) {
            return in.readNBytes(PileReader.LARGEST + 1);
        } catch (NoSuchFileException e) {
            throw new UsageFault("heapwright: there is no file \"" + name
                    + "\". Give the path of a pile document, or - for standard input."
                    + " Example: heapwright checkup pile.json");
        } catch (IOException e) {
            throw new UsageFault("heapwright: \"" + name + "\" cannot be read as a file: " + e.getMessage());
        }
    }
}
