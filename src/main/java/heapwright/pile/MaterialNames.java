package heapwright.pile;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The words by which a material may be called: its id, its name and what people also call it. Case of letters does not
 * matter, nor whether words are parted by blanks, hyphens or commas. Every door looks materials up here.
 */
public final class MaterialNames {

    /** As many candidates as a person reads. */
    private static final int MOST = 8;

    /** What parts words besides blanks: hyphens of every kind, commas, the no-break space. */
    private static final String PARTING = "-_,\u00a0\u2010\u2011\u2012\u2013";

    private final Set<String> ids;
    private final Map<String, Set<String>> owners = new LinkedHashMap<>();

    /** The words of a vocabulary. */
    public MaterialNames(Vocabulary vocabulary) {
        ids = Set.copyOf(vocabulary.materials());
        vocabulary.materials().forEach(id -> own(id, id));
        vocabulary.materialAliases().forEach(this::own);
    }

    private void own(String name, String id) {
        owners.computeIfAbsent(plain(name), n -> new LinkedHashSet<>()).add(id);
    }

    /** A word in its plain form: two words that differ only in form are the same name. */
    public static String plain(String word) {
        StringBuilder plain = new StringBuilder(word.length());
        boolean parted = false;
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            if (Character.isWhitespace(c) || PARTING.indexOf(c) >= 0) {
                parted = plain.length() > 0;
            } else {
                if (parted) {
                    plain.append(' ');
                    parted = false;
                }
                plain.append(c == '\u2019' ? '\'' : c);
            }
        }
        return plain.toString().toLowerCase(Locale.ROOT);
    }

    /** The material that a word names; empty where it names none, or several. */
    public Optional<String> named(String word) {
        if (ids.contains(word)) {
            return Optional.of(word);
        }
        Set<String> meant = owners.getOrDefault(plain(word), Set.of());
        return meant.size() == 1 ? Optional.of(meant.iterator().next()) : Optional.empty();
    }

    /**
     * The materials that a word may mean where it names no single one: those that share it as a name, else those with a
     * name in which its words stand, else, where every word is known, those that share its rarest words; in the order
     * of the table, at most eight.
     */
    public List<String> candidates(String word) {
        Set<String> meant = new LinkedHashSet<>(owners.getOrDefault(plain(word), Set.of()));
        if (meant.isEmpty()) {
            NameWords words = new NameWords(owners.keySet());
            List<String> stems = Stems.of(word);
            meant.addAll(owned(words.holding(stems)));
            if (meant.isEmpty() && words.knowsAll(stems)) {
                meant.addAll(owned(words.sharing(stems)));
            }
        }
        return meant.stream().limit(MOST).toList();
    }

    /**
     * The materials that a person who types a word may look for: those with a name in which all its words stand, be they
     * one or many of a thing; else those that share its rarest words; in the order of the table.
     */
    public List<String> fitting(String word) {
        NameWords words = new NameWords(owners.keySet());
        List<String> stems = Stems.of(word);
        Set<String> meant = owned(words.holding(stems));
        return List.copyOf(meant.isEmpty() ? owned(words.sharing(stems)) : meant);
    }

    private Set<String> owned(List<String> names) {
        Set<String> meant = new LinkedHashSet<>();
        names.forEach(name -> meant.addAll(owners.get(name)));
        return meant;
    }

    /** The material whose name is nearest to a misspelt word; words of the document's own count as names too. */
    Optional<String> near(String word, Collection<String> own) {
        List<String> names = new ArrayList<>(ids);
        names.addAll(own);
        names.addAll(owners.keySet());
        names.removeIf(name -> Stems.foreign(plain(word), plain(name)));
        return Closest.to(word, names)
                .map(near -> ids.contains(near) || own.contains(near)
                        ? near
                        : owners.get(near).iterator().next());
    }
}
