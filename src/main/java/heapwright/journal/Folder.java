package heapwright.journal;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A folder of pile files. An id is compared with the names that are there and never made into a path, so that no id
 * can lead elsewhere.
 */
final class Folder {

    static final String ENDING = ".json";

    private final Path path;

    Folder(Path path) {
        this.path = path;
    }

    Path path() {
        return path;
    }

    /** The folder of that name in this one, made if it is not there. */
    Folder inner(String name) throws IOException {
        Path inner = path.resolve(name);
        if (!Files.exists(inner, LinkOption.NOFOLLOW_LINKS)) {
            Files.createDirectory(inner);
        }
        return new Folder(inner).checked();
    }

    /** The folder of that name in this one; nothing if there is none, or something else, such as a link, by the name. */
    Optional<Folder> innerIfThere(String name) {
        Path inner = path.resolve(name);
        boolean there = Files.isDirectory(inner, LinkOption.NOFOLLOW_LINKS);
        return there ? Optional.of(new Folder(inner)) : Optional.empty();
    }

    private Folder checked() throws IOException {
        if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            throw JournalFault.obstructed(path, null);
        }
        return this;
    }

    /** All that is named as a pile file is, in the order of the names. */
    List<Path> files() throws IOException {
        return all().stream()
                .filter(Folder::isPileFile)
                .sorted(Comparator.comparing(Folder::name))
                .toList();
    }

    private static boolean isPileFile(Path file) {
        return name(file).endsWith(ENDING) && !name(file).startsWith(".");
    }

    /** Whether a file stands in this folder, by its path. */
    boolean holds(Path file) {
        return path.equals(file.getParent());
    }

    /** The file that the id stands for; nothing if there is none, or more than one that this system cannot tell apart. */
    Optional<Path> find(String id) throws IOException {
        String name = id + ENDING;
        List<Path> found = all().stream()
                .filter(file -> name(file).equals(name) && isPileFile(file))
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** The names that are in use, in lower case, because to some systems large and small letters are the same. */
    Set<String> taken() throws IOException {
        return all().stream().map(file -> name(file).toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
    }

    /** The names that are in use in the folder of that name in this one; none if there is no such folder. */
    Set<String> takenIn(String name) throws IOException {
        Optional<Folder> inner = innerIfThere(name);
        return inner.isPresent() ? inner.get().taken() : Set.of();
    }

    /** Where a file of that slug would stand. */
    Path place(String slug) {
        return path.resolve(slug + ENDING);
    }

    /** Where a file would stand here under its own name. */
    Path same(Path file) {
        return path.resolve(file.getFileName());
    }

    /** Where a file would stand here under its own name, or under the next that is free. */
    Path placeFor(Path file) throws IOException {
        Path same = same(file);
        if (!Files.exists(same, LinkOption.NOFOLLOW_LINKS)) {
            return same;
        }
        Set<String> taken = taken();
        return place(Slug.free(Slug.of(id(file)), slug -> taken.contains(slug + ENDING)));
    }

    static String id(Path file) {
        String name = name(file);
        return name.substring(0, name.length() - ENDING.length());
    }

    static String name(Path file) {
        return file.getFileName().toString();
    }

    private List<Path> all() throws IOException {
        List<Path> all = new ArrayList<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(path)) {
            entries.forEach(all::add);
        } catch (NoSuchFileException e) {
            return List.of();
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        return all;
    }
}
