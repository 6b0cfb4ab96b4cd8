package heapwright.web;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The real server in a process of its own, as a person starts it, with what it says on its error stream in a file. */
final class ServerProcess implements AutoCloseable {

    private final Process process;
    private final String address;
    private final Path said;

    private ServerProcess(Process process, String address, Path said) {
        this.process = process;
        this.address = address;
        this.said = said;
    }

    /** Starts it by the starter of the build and waits until it has printed its address. */
    static ServerProcess start(Path starter, Path piles, Path said) throws IOException {
        Process process = new ProcessBuilder(
                        starter.toString(), "serve", "--no-browser", "--port", "0", "--piles", piles.toString())
                .redirectError(ProcessBuilder.Redirect.appendTo(said.toFile()))
                .start();
        BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String line = lines.readLine();
        if (line == null || !line.startsWith("http")) {
            process.destroyForcibly();
            throw new IOException("the server did not start: " + Files.readString(said));
        }
        return new ServerProcess(process, line.substring(0, line.length() - 1), said);
    }

    /** The address, without a slash at the end. */
    String address() {
        return address;
    }

    int port() {
        return Integer.parseInt(address.substring(address.lastIndexOf(':') + 1));
    }

    boolean alive() {
        return process.isAlive();
    }

    int exitCode() {
        return process.exitValue();
    }

    /** What it said on its error stream. */
    String said() throws IOException {
        return Files.readString(said);
    }

    /** Ends it as a power cut would, between two instructions. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    boolean endsWithin(long seconds) throws InterruptedException {
        return process.waitFor(seconds, TimeUnit.SECONDS);
    }

    /** Threads, open files and resident memory, where the system tells. */
    String weight() throws IOException {
        Path about = Path.of("/proc", String.valueOf(process.pid()));
        if (!Files.isDirectory(about)) {
            return "not told by this system";
        }
        List<String> status = Files.readAllLines(about.resolve("status"));
        try (Stream<Path> open = Files.list(about.resolve("fd"))) {
            return value(status, "Threads:") + " threads, " + open.count() + " open files, " + value(status, "VmRSS:")
                    + " resident";
        }
    }

    private static String value(List<String> status, String field) {
        return status.stream()
                .filter(line -> line.startsWith(field))
                .map(line -> line.substring(field.length()).strip())
                .findFirst()
                .orElse("?");
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(20, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            process.destroyForcibly();
        }
    }
}
