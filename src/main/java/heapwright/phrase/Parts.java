package heapwright.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Parts what somebody typed into the things that it tells, each with the denial that holds for it. */
final class Parts {

    private static final Pattern SENTENCES = Pattern.compile("[;\\n()]|[.!?]+(?=\\s|$)|\\s[-\u2013\u2014]+\\s");

    private static final String HOT = "(?:hot|warm|steaming)";

    private static final String FILLING =
            "(?:(?:it|its|it.s|is|has|gone|went|got|now|then|since|but|and|just|all|really|very|quite"
                    + "|rather|nice|lovely|stone|feels|too|turned|right) )*";

    /** "It was hot and now it's cold" tells one thing, in whatever way its halves are joined. */
    private static final Pattern WAS_HOT =
            typed("(?<!never |not |n.t |nt )\\b(?:(?:was|were|got|went|been|used to be|started(?: off| out)?) "
                    + FILLING + HOT
                    + "|steamed(?: nicely| well)?(?: for an? \\w+)?|(?:heated|warmed) up(?: nicely| well| fine)?|" + HOT
                    + " (?:last \\w+|yesterday|before|at first|to start with))(?: at first| inside| in the middle| for a \\w+)?[ ,]+"
                    + FILLING + "(?:now|then|since|but|and) " + FILLING
                    + "(?:cold|cool|cooled|cooler|stopped(?=\\W*$))\\b(?: (?:now|down|right down|again|off))*");

    private static final Pattern SOFT = typed(" (?:and|but|also|plus|though|although|however|yet) ");
    private static final Pattern EITHER = typed(" (?:or|nor) ");
    private static final Pattern LEADING = typed("^(?:(?:and|but|also|plus|then|or|nor|though) )+|(?: too)$");

    /** A part that begins so tells by itself and is not under a denial before it. */
    private static final Set<String> BEGINS = Set.of(
            "it", "its", "there", "theres", "the", "i", "ive", "im", "my", "we", "smells", "stinks", "some", "lots",
            "loads", "full", "still", "has", "is", "now", "they");

    private final SignNames names;
    private final List<String> whole;

    /** One thing that is told, and whether it may stand under a denial before it ("no flies and slimy"). */
    record Part(String said, boolean doubtful) {}

    /** What stands between two commas, and its parts. */
    record Whole(String said, List<Part> parts) {}

    /** @param names that are not parted, such as "dark and crumbly" */
    Parts(SignNames names) {
        this.names = names;
        whole = names.with(n -> SOFT.matcher(n).find() || EITHER.matcher(n).find());
    }

    /** The things told, in their order; one that tells nothing where nothing else was typed. */
    List<Whole> of(String line) {
        List<Whole> all = new ArrayList<>();
        if (names.called(WordForms.plain(line)).isEmpty()) {
            for (String sentence : SENTENCES.split(line.replaceAll("\\s*[&+]\\s*", " and "))) {
                all.addAll(sentence(sentence));
            }
        }
        return all.isEmpty() ? List.of(new Whole(line, List.of())) : all;
    }

    private List<Whole> sentence(String sentence) {
        String[] pieces = WAS_HOT.matcher(SmallWords.withoutFalseNo(sentence))
                .replaceAll("heated then cooled")
                .split(",");
        int listed = deniedUpTo(pieces);
        List<Whole> all = new ArrayList<>();
        for (int i = 0; i < pieces.length; i++) {
            String said = trimmed(pieces[i]);
            if (!said.isEmpty()) {
                all.add(whole(i <= listed && !denies(said) && denied(pieces, i) ? "no " + said : said));
            }
        }
        return all;
    }

    /** The last of the pieces for which a denial holds: in "no flies, maggots or rats" it holds for all. */
    private static int deniedUpTo(String... commas) {
        for (int i = commas.length - 1; i > 0; i--) {
            String piece = " " + commas[i].strip() + " ";
            if (EITHER.matcher(piece).find() && !denies(piece.strip())) {
                return i;
            }
        }
        return 0;
    }

    /** Whether a piece stands in a list that began with a denial. */
    private static boolean denied(String[] commas, int at) {
        for (int i = at; i >= 0; i--) {
            String piece = commas[i].strip();
            if (denies(piece)) {
                return true;
            }
            if (begins(piece)) {
                return false;
            }
        }
        return false;
    }

    private Whole whole(String said) {
        String kept = said.replaceAll("\\s+", " ");
        for (String name : whole) {
            kept = Pattern.compile("\\b" + name + "\\b", Pattern.CASE_INSENSITIVE)
                    .matcher(kept)
                    .replaceAll(found -> found.group().replace(' ', '_'));
        }
        List<Part> parts = new ArrayList<>();
        boolean under = false;
        for (String soft : SOFT.split(kept)) {
            String piece = trimmed(soft);
            boolean doubtful = under && !denies(piece) && !begins(piece);
            boolean negated = false;
            for (String either : denies(piece) ? EITHER.split(piece) : new String[] {piece}) {
                String part = trimmed(either).replace('_', ' ');
                boolean carries = negated && !denies(part) && !begins(part);
                if (!part.isEmpty()) {
                    parts.add(new Part(carries ? "not " + part : part, doubtful));
                }
                negated |= denies(part);
            }
            under = negated || doubtful;
        }
        return new Whole(said, parts);
    }

    private static Pattern typed(String pattern) {
        return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE);
    }

    private static String trimmed(String piece) {
        return LEADING.matcher(piece.strip()).replaceAll("").strip();
    }

    private static boolean denies(String piece) {
        return WordForms.words(piece).stream().anyMatch(SmallWords.DENY::contains);
    }

    private static boolean begins(String piece) {
        return !piece.isEmpty() && BEGINS.contains(WordForms.words(piece).get(0));
    }
}
