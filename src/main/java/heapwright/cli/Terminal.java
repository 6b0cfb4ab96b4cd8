package heapwright.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Where a command reads and writes: answers on one stream, messages on another.
 *
 * @param in what is typed or piped in
 * @param out answers
 * @param err messages
 * @param bold whether headings may be marked by terminal codes
 */
public record Terminal(InputStream in, PrintStream out, PrintStream err, boolean bold) {

    /** The terminal the program was started from. Codes are left out for pipes and where NO_COLOR is set. */
    public static Terminal system() {
        boolean bold = System.console() != null && System.getenv("NO_COLOR") == null;
        return new Terminal(System.in, utf8(FileDescriptor.out), utf8(FileDescriptor.err), bold);
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }

    /** Reads lines that a person types. */
    public BufferedReader lines() {
        return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
}
