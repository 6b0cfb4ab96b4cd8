package heapwright.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;

/** The memory of another process, as Linux tells it. */
final class Memory {

    private Memory() {}

    /** What is resident now, and the most that ever was. */
    static String of(String pid) throws IOException {
        if (pid.isEmpty()) {
            return "not asked";
        }
        Path status = Path.of("/proc", pid, "status");
        return Files.exists(status)
                ? Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("VmRSS") || line.startsWith("VmHWM"))
                        .map(line -> line.replaceAll("\\s+", " "))
                        .collect(Collectors.joining(", "))
                : "the process has ended";
    }
}
