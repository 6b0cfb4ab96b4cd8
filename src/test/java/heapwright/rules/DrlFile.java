package heapwright.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One file of rules as text.
 *
 * @param path where it stands, from the folder of the project
 * @param folder the name of its folder, which is its pass
 * @param text all of it
 * @param rules its rules in order
 */
record DrlFile(Path path, String folder, String text, List<DrlRule> rules) {

    private static final Path RULES = Path.of("rules");
    private static final Pattern COMMENT = Pattern.compile("(?m)//.*$");
    private static final Pattern METADATA = Pattern.compile("(?m)^\\s*@\\w+\\(.*\\)\\s*$");
    private static final Pattern NAME = Pattern.compile("(?m)^rule \".*\"$");
    private static final Pattern GROUP = Pattern.compile("(?m)^\\s*agenda-group \".*\"$");
    private static final Pattern RULE =
            Pattern.compile("(?ms)(?<above>^[^\\n]*\\n)^rule \"(?<name>[^\"]*)\"(?<body>.*?)^end$");

    /** Every file of rules, in order of path. */
    static List<DrlFile> all() {
        try (Stream<Path> files = Files.walk(RULES)) {
            return files.filter(f -> f.toString().endsWith(".drl"))
                    .sorted()
                    .map(DrlFile::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every rule of every file. */
    static List<DrlRule> allRules() {
        return all().stream().flatMap(f -> f.rules().stream()).toList();
    }

    private static DrlFile read(Path path) {
        try {
            String folder = path.getParent().getFileName().toString();
            String text = Files.readString(path);
            List<DrlRule> rules = new ArrayList<>();
            for (Matcher m = RULE.matcher(text); m.find(); ) {
                rules.add(new DrlRule(path, folder, m.group("above").strip(), m.group("name"), m.group("body")));
            }
            return new DrlFile(path, folder, text, rules);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the engine reads as conditions and consequences: no comments, names, metadata or agenda groups. */
    String logic() {
        String logic = text;
        for (Pattern aside : List.of(COMMENT, METADATA, NAME, GROUP)) {
            logic = aside.matcher(logic).replaceAll("");
        }
        return logic;
    }

    long lines() {
        return text.lines().count();
    }

    /** The conditions and consequences of all files. */
    static String allLogic() {
        return all().stream().map(DrlFile::logic).collect(Collectors.joining("\n"));
    }
}
