package heapwright.author;

import heapwright.advice.engine.Pass;
import heapwright.knowledge.KnowledgeFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One file of rules as text.
 *
 * @param name where it stands, from the folder of rules
 * @param pass the name of its folder, which is its pass
 * @param text all of it
 * @param rules its rules in order
 */
public record RuleFile(String name, String pass, String text, List<WrittenRule> rules) {

    /** Rules stand in the folder of their pass; one folder deeper they are seen and refused. */
    private static final int DEPTH = 3;

    private static final String ENDING = ".drl";
    private static final Pattern COMMENT = Pattern.compile("(?m)//.*$");
    private static final Pattern METADATA = Pattern.compile("(?m)^\\s*@\\w+\\(.*\\)\\s*$");
    private static final Pattern NAME = Pattern.compile("(?m)^rule \".*\"$");
    private static final Pattern GROUP = Pattern.compile("(?m)^\\s*agenda-group \".*\"$");
    private static final Pattern RULE =
            Pattern.compile("(?ms)(?<above>^[^\\n]*\\n)^rule \"(?<name>[^\"]*)\"(?<body>.*?)^end$");

    public RuleFile {
        rules = List.copyOf(rules);
    }

    /** A file of rules by its text. */
    public static RuleFile of(String name, String text) {
        String pass = name.contains("/") ? name.substring(0, name.indexOf('/')) : "";
        List<WrittenRule> rules = new ArrayList<>();
        for (Matcher m = RULE.matcher(text); m.find(); ) {
            rules.add(new WrittenRule(
                    name,
                    line(text, m.start("name")),
                    pass,
                    m.group("above").strip(),
                    m.group("name"),
                    m.group("body")));
        }
        return new RuleFile(name, pass, text, rules);
    }

    /**
     * Every file of rules below a folder, in order of name.
     *
     * @param faults takes what cannot be read, or stands where no rules do, a line each
     */
    public static List<RuleFile> below(Path folder, List<String> faults) {
        List<RuleFile> files = new ArrayList<>();
        for (Path file : found(folder)) {
            String name = folder.relativize(file).toString().replace('\\', '/');
            List<String> passes = Stream.of(Pass.values()).map(Pass::id).toList();
            if (!passes.contains(name.substring(0, Math.max(0, name.indexOf('/'))))) {
                faults.add(name + ": found rules here. Allowed: in the folder of a pass, one of "
                        + String.join(", ", passes) + ". Example: \"derive/water.drl\".");
                continue;
            }
            try {
                byte[] bytes = new KnowledgeFolder(folder).bytes(file);
                files.add(of(name, new String(bytes, StandardCharsets.UTF_8)));
            } catch (IOException e) {
                faults.add(name + ": cannot be read: " + e.getMessage());
            }
        }
        return files;
    }

    private static List<Path> found(Path folder) {
        try (Stream<Path> files = Files.walk(folder, DEPTH)) {
            return files.filter(f -> f.toString().endsWith(ENDING)).sorted().toList();
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    /** What the engine reads as conditions and consequences: no comments, names, metadata or agenda groups. */
    public String logic() {
        String logic = text;
        for (Pattern aside : List.of(COMMENT, METADATA, NAME, GROUP)) {
            logic = aside.matcher(logic).replaceAll("");
        }
        return logic;
    }

    /** How many lines it has. */
    public int lines() {
        return (int) text.lines().count();
    }

    static int line(String text, int at) {
        return (int) text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
    }
}
