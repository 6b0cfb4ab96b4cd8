package heapwright.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Tries the packed server, in a process of its own, against what happens to machines: killed while it saves, a full disk,
 * a disk that turns read-only, too little memory, and a long day of sound and unsound requests. Started by hand, by
 * {@code src/test/scripts/faults}, which makes the small disk: {@code FaultHarness SCRATCH SMALL_DISK KILLS REQUESTS
 * FLOODS}; "-" for the small disk leaves out what needs one, and so does 0 for a number. The system property "starter"
 * names another starter than that of the build. Prints a line for each trial, and ends with 1 if one did not stand.
 */
public final class FaultHarness {

    private static final long SEED = 7;

    private FaultHarness() {}

    /** A trial: what it was, whether it stood, and its figures. */
    record Outcome(String trial, boolean stood, String figures) {
        @Override
        public String toString() {
            return (stood ? "stood   " : "FAILED  ") + trial + ": " + figures;
        }
    }

    /** Something that is tried. */
    private interface Trial {
        Outcome run() throws Exception;
    }

    public static void main(String[] args) throws IOException {
        Path scratch = Files.createDirectories(Path.of(args[0]));
        Path starter =
                Path.of(System.getProperty("starter", "target/heapwright")).toAbsolutePath();
        int kills = Integer.parseInt(args[2]);
        int requests = Integer.parseInt(args[3]);
        int floods = Integer.parseInt(args[4]);
        List<Trial> trials = new ArrayList<>();
        if (!args[1].equals("-")) {
            SmallDisk disk = new SmallDisk(Path.of(args[1]));
            trials.add(new DiskTrials(starter, scratch, disk)::full);
            trials.add(new DiskTrials(starter, scratch, disk)::readOnly);
        }
        if (floods > 0) {
            trials.add(() -> new MemoryTrial(starter, scratch).run(floods));
        }
        if (requests > 0) {
            trials.add(() -> new RequestTrial(starter, scratch, SEED).run(requests));
        }
        if (kills > 0) {
            trials.add(() -> new KillTrial(starter, scratch, SEED).run(kills));
        }
        boolean stood = true;
        for (Trial trial : trials) {
            Outcome outcome = outcome(trial);
            System.out.println(outcome);
            stood &= outcome.stood();
        }
        System.exit(stood ? 0 : 1);
    }

    private static Outcome outcome(Trial trial) {
        try {
            return trial.run();
        } catch (Exception | AssertionError e) {
            return new Outcome("a trial", false, e + " at " + Arrays.toString(Arrays.copyOf(e.getStackTrace(), 3)));
        }
    }
}
