package heapwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** Speaks with a person line by line. What it says goes to the message stream, so that the answer can be piped. */
final class Dialogue {

    private final Terminal terminal;
    private final BufferedReader lines;

    Dialogue(Terminal terminal) {
        this.terminal = terminal;
        this.lines = terminal.lines();
    }

    void say(String text) {
        terminal.err().println(text);
    }

    /** One line of answer; empty when nothing more comes. */
    Optional<String> prompt(String text) {
        terminal.err().print(text + " ");
        terminal.err().flush();
        try {
            return Optional.ofNullable(lines.readLine());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
