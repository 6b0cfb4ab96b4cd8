package heapwright.knowledge;

import heapwright.pile.Closest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A folder laid out like {@code rules/}: tables in {@code tables}, rows of evidence in {@code evidence}. Only plain files
 * in it are read, none that a link leads to outside, and none that is larger than any table could be.
 */
public final class KnowledgeFolder implements KnowledgeReader.Shelf {

    /** Ten times the largest table, bytes. */
    public static final int LARGEST = 4 << 20;

    /** Of a folder that is not meant nobody reads every file. */
    private static final int MOST = 10;

    private static final String TABLES = "tables";
    private static final String EVIDENCE = "evidence";
    private static final String JSON = ".json";
    private static final String RULES = ".drl";
    private static final Pattern READ_BY_PEOPLE = Pattern.compile(".*\\.(md|txt)");

    private final Path folder;

    /** @param folder a folder that is there */
    public KnowledgeFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * What a person names: a folder laid out like {@code rules/}, or one table by its file name.
     *
     * @param named a file or folder that is there
     */
    public static KnowledgeReader.Shelf shelf(Path named) {
        if (Files.isDirectory(named)) {
            return new KnowledgeFolder(named);
        }
        Path file = named.toAbsolutePath();
        return name -> Path.of(name).getFileName().equals(file.getFileName())
                ? new ByteArrayInputStream(new KnowledgeFolder(file.getParent()).bytes(file))
                : null;
    }

    /** Whether there are rules among what a person names, in it or in a folder of it. */
    public static boolean hasRules(Path named) {
        try (Stream<Path> files = Files.walk(named, 2)) {
            return files.anyMatch(file -> file.toString().endsWith(RULES));
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }

    @Override
    public InputStream open(String name) throws IOException {
        Path file = folder.resolve(shown(name));
        return Files.exists(file) || Files.isSymbolicLink(file) ? new ByteArrayInputStream(bytes(file)) : null;
    }

    /** Where a table stands in such a folder, from its name. */
    public static String shown(String name) {
        return name.startsWith(EVIDENCE + "/") ? name : TABLES + "/" + name;
    }

    /**
     * What a file of this folder holds.
     *
     * @throws IOException when it is no plain file of this folder, or too large
     */
    public byte[] bytes(Path file) throws IOException {
        if (!file.toRealPath().startsWith(folder.toRealPath())) {
            throw new IOException("it leads out of the folder, and nothing outside is read");
        }
        if (!Files.isRegularFile(file)) {
            throw new IOException("it is no plain file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw new IOException("it is larger than " + (LARGEST >> 20) + " MiB, which no table needs");
            }
            return bytes;
        }
    }

    /**
     * Files among the tables and the evidence that nothing reads, a line each.
     *
     * @param allowed the names of the tables that may be there
     */
    public List<String> strays(List<String> allowed) {
        Set<String> names = allowed.stream().map(KnowledgeFolder::shown).collect(Collectors.toSet());
        List<String> strays = new ArrayList<>();
        for (String part : List.of(TABLES, EVIDENCE)) {
            for (Path file : files(folder.resolve(part))) {
                String name = part + "/" + file.getFileName();
                if (name.endsWith(JSON) && !names.contains(name)) {
                    strays.add(name + ": found a table of this name. Allowed: the names of the shipped ones."
                            + Closest.to(name, names)
                                    .map(near -> " Did you mean \"" + near + "\"?")
                                    .orElse(" Example: \"tables/materials.json\"."));
                }
            }
        }
        return strays;
    }

    /**
     * Whatever is in the folder that is no data to be added, a line each.
     *
     * @param tables the tables that may be there; beside them rows of evidence on any cause
     */
    List<String> foreign(List<String> tables) {
        List<String> foreign = new ArrayList<>();
        for (Path entry : files(folder)) {
            String name = entry.getFileName().toString();
            if (!List.of(TABLES, EVIDENCE).contains(name)
                    && !READ_BY_PEOPLE.matcher(name).matches()) {
                foreign.add(refused(name, "the folders tables and evidence, and texts for people (.md, .txt)"));
            }
        }
        Set<String> allowed = tables.stream().map(KnowledgeFolder::shown).collect(Collectors.toSet());
        for (Cause cause : Cause.values()) {
            allowed.add(EVIDENCE + "/" + cause.id() + JSON);
        }
        for (String part : List.of(TABLES, EVIDENCE)) {
            for (Path entry : files(folder.resolve(part))) {
                String name = part + "/" + entry.getFileName();
                if (!allowed.contains(name) && !READ_BY_PEOPLE.matcher(name).matches()) {
                    foreign.add(refused(
                                    name,
                                    part.equals(EVIDENCE)
                                            ? "rows of evidence on a cause. Example: \"evidence/too-wet.json\""
                                            : String.join(", ", tables))
                            + Closest.to(name, allowed)
                                    .map(near -> " Did you mean \"" + near + "\"?")
                                    .orElse(""));
                }
            }
        }
        return foreign.size() <= MOST
                ? foreign
                : Stream.concat(
                                foreign.stream().limit(MOST),
                                Stream.of("found " + (foreign.size() - MOST)
                                        + " more files and folders of the kind; is it" + " the right folder?"))
                        .toList();
    }

    private static String refused(String name, String allowed) {
        return name + ": found "
                + (name.endsWith(RULES) ? "rules; local knowledge is data alone, and rules need a build" : "this")
                + ". Allowed: " + allowed + ".";
    }

    /** The files in a folder, in order of name; none where it cannot be listed or lies elsewhere. */
    private List<Path> files(Path part) {
        try {
            if (!Files.isDirectory(part) || !part.toRealPath().startsWith(folder.toRealPath())) {
                return List.of();
            }
            try (Stream<Path> files = Files.list(part)) {
                return files.sorted(Comparator.comparing(Path::toString)).toList();
            }
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }
}
