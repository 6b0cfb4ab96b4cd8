package heapwright.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Opens an address in the person's browser, by the system's own opener; where there is none nothing happens. */
final class Browser {

    private static final Logger LOG = LoggerFactory.getLogger(Browser.class);

    private Browser() {}

    static void open(String address) {
        List<String> command = command(address);
        if (command.isEmpty()) {
            return;
        }
        try {
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            LOG.info("No browser could be opened: {}", e.getMessage());
        }
    }

    private static List<String> command(String address) {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        if (system.contains("win")) {
            return List.of("rundll32", "url.dll,FileProtocolHandler", address);
        }
        if (system.contains("mac")) {
            return List.of("open", address);
        }
        boolean screen = System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
        return screen ? List.of("xdg-open", address) : List.of();
    }
}
