package heapwright.journal;

import heapwright.pile.Entry;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.ReadResult;
import heapwright.pile.TestVocabulary;
import heapwright.pile.TypedEntry;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * Two programs write notes into one file, as {@code heapwright note} does, and are killed in the middle of it, again and
 * again. Started by hand, by {@code src/test/scripts/notes-killed}: {@code NoteTrial FOLDER KILLS}. Prints what came of
 * it, and ends with 1 if a note was lost or doubled, or the file was broken.
 */
public final class NoteTrial {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 21);
    private static final int KILLS_A_FILE = 10;
    private static final int LONGEST_WAIT_MS = 120;
    private static final long SEED = 7;

    private NoteTrial() {}

    public static void main(String[] args) throws Exception {
        if (args[0].equals("write")) {
            write(Path.of(args[1]), args[2]);
            return;
        }
        Path folder = Files.createDirectories(Path.of(args[0]));
        int kills = Integer.parseInt(args[1]);
        Random random = new Random(SEED);
        List<String> faults = new ArrayList<>();
        Set<String> acknowledged = new HashSet<>();
        int all = 0;
        int unsure = 0;
        Path file = folder;
        for (int kill = 0; kill < kills; kill++) {
            if (kill % KILLS_A_FILE == 0) {
                all += acknowledged.size();
                acknowledged.clear();
                file = folder.resolve("heap-" + kill + ".json");
                Files.writeString(
                        file,
                        "{\"heapwright\": \"pile/1\", \"name\": \"Heap\", \"built\": \"2026-11-01\", \"asOf\": \"" + DAY
                                + "\"}\n");
            }
            List<Process> writers = List.of(start(file, kill + " a"), start(file, kill + " b"));
            List<BufferedReader> told = writers.stream()
                    .map(w -> new BufferedReader(new InputStreamReader(w.getInputStream(), StandardCharsets.UTF_8)))
                    .toList();
            for (BufferedReader one : told) {
                acknowledged.add(one.readLine());
            }
            Thread.sleep(random.nextInt(LONGEST_WAIT_MS));
            // By its handle: a process that is destroyed itself closes what it has told.
            writers.forEach(writer -> writer.toHandle().destroyForcibly());
            for (BufferedReader one : told) {
                one.lines().forEach(acknowledged::add);
            }
            for (Process writer : writers) {
                writer.waitFor();
            }
            unsure += check(file, acknowledged, faults);
        }
        all += acknowledged.size();
        faults.stream().limit(5).forEach(System.err::println);
        System.out.println(
                kills + " kills of two programs that write notes into one file: " + all + " notes acknowledged, "
                        + unsure + " more were written and not acknowledged yet; "
                        + (faults.isEmpty() ? "none lost, none doubled, no file broken" : faults.size() + " FAULTS"));
        System.exit(faults.isEmpty() ? 0 : 1);
    }

    private static Process start(Path file, String name) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        NoteTrial.class.getName(),
                        "write",
                        file.toString(),
                        name)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** Writes note after note until it is killed; one that another program came before is written again. */
    private static void write(Path file, String name) throws IOException {
        PlainFile plain = new PlainFile(file);
        PileReader reader = new PileReader(new TestVocabulary());
        for (int i = 0; ; i++) {
            String words = "note " + name + " " + i;
            TypedEntry entry =
                    new TypedEntry(DAY, List.of(), List.of(), Map.of(), List.of(), List.of(), Map.of(), words);
            boolean done = false;
            while (!done) {
                byte[] before = Files.readAllBytes(file);
                byte[] after = entry.into(before);
                if (!reader.read("heap", after).problems().isEmpty()) {
                    throw new IOException("unsound");
                }
                done = plain.replace(before, after);
            }
            System.out.println(words);
        }
    }

    /** How many notes stand in the file that nobody was told of. */
    private static int check(Path file, Set<String> acknowledged, List<String> faults) throws IOException {
        ReadResult read = new PileReader(new TestVocabulary()).read("heap", Files.readAllBytes(file));
        if (read.pile().isEmpty()) {
            faults.add(file + " is broken");
            return 0;
        }
        Pile pile = read.pile().get();
        List<String> notes = pile.log().stream().map(Entry::note).toList();
        Set<String> once = new HashSet<>(notes);
        if (once.size() != notes.size()) {
            faults.add(file + " has a note twice");
        }
        acknowledged.stream()
                .filter(words -> words != null && !once.contains(words))
                .forEach(words -> faults.add(words + " is lost"));
        int more = 0;
        for (String words : once) {
            more += acknowledged.add(words) ? 1 : 0;
        }
        return more;
    }
}
