package heapwright.load;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Tries how a server that runs on this machine stands up to many at once. Started by hand, on the test class path:
 *
 * <pre>
 * LoadHarness plant FOLDER COUNT READINGS              writes pile files into a folder for the server to serve
 * LoadHarness checkups ADDRESS CLIENTS SECONDS PAUSE_MS [PID]
 * LoadHarness stored ADDRESS CLIENTS SECONDS PAUSE_MS [PID]   the piles of its folder, viewed and noted in
 * LoadHarness list ADDRESS CLIENTS SECONDS PAUSE_MS [PID]     the list of its folder
 * LoadHarness heavy ADDRESS AT_ONCE BYTES ROUNDS [PID]        large documents to /api/checkup, then is it still there?
 * </pre>
 *
 * <p>The process id is for the server's memory. All that is sent is invented.
 */
public final class LoadHarness {

    private LoadHarness() {}

    /** Runs one kind of load and prints the figures. */
    public static void main(String[] args) throws IOException, InterruptedException {
        if (args.length < 4) {
            throw new IllegalArgumentException("see the comment of the class; found " + Arrays.toString(args));
        }
        if (args[0].equals("plant")) {
            PileFiles.plant(Path.of(args[1]), Integer.parseInt(args[2]), Integer.parseInt(args[3]));
            return;
        }
        String pid = args.length > 5 ? args[5] : "";
        System.out.println("memory before: " + Memory.of(pid));
        if (args[0].equals("heavy")) {
            new HeavyDocuments(args[1])
                    .send(Integer.parseInt(args[2]), Integer.parseInt(args[3]), Integer.parseInt(args[4]));
        } else {
            Crowd crowd = new Crowd(visitor(args[0], args[1]), Long.parseLong(args[4]));
            crowd.run(Integer.parseInt(args[2]), Integer.parseInt(args[3]));
        }
        System.out.println("memory after: " + Memory.of(pid));
    }

    private static Visitor visitor(String kind, String address) throws IOException, InterruptedException {
        return switch (kind) {
            case "checkups" -> new Checkups(address);
            case "stored" -> StoredPiles.of(address);
            case "list" -> new PileList(address);
            default ->
                throw new IllegalArgumentException(
                        "found " + kind + ", allowed are plant, checkups, stored, list, heavy");
        };
    }
}
