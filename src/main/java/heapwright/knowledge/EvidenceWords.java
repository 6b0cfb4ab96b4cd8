package heapwright.knowledge;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Puts what a row of evidence reads into words, from the sentences of the tables. */
public final class EvidenceWords {

    private final Knowledge knowledge;
    private final BiFunction<String, Id, String> word;

    /** With the ids of conditions, readings, traits and the like as their words: for readers who write rows. */
    public EvidenceWords(Knowledge knowledge) {
        this(knowledge, (kind, id) -> spaced(id));
    }

    /**
     * @param word the word for a constant of a kind: {@code condition}, {@code reading}, {@code trait} or
     *     {@code model.says}
     */
    public EvidenceWords(Knowledge knowledge, BiFunction<String, Id, String> word) {
        this.knowledge = knowledge;
        this.word = word;
    }

    /** The name of a row: "problem: answer". */
    public String name(Evidence row) {
        String cause = knowledge.causes().get(row.cause()).name();
        return (row.speaks() == Evidence.Speaks.FOR ? "" : "not ") + cause + ": " + when(row.when());
    }

    /** What a row reads, as part of a sentence. */
    public String when(When when) {
        if (when instanceof When.Seen seen) {
            return any(seen.anyOf(), s -> clause(knowledge.signs().get(s).say()));
        }
        if (when instanceof When.Denied denied) {
            return any(denied.anyOf(), s -> clause(knowledge.signs().get(s).deny()));
        }
        if (when instanceof When.Holds holds) {
            return word.apply("condition", holds.condition());
        }
        if (when instanceof When.HoldsNot not) {
            return "it is not so that " + word.apply("condition", not.condition());
        }
        if (when instanceof When.Placed placed) {
            return (placed.measured() ? "the measured " : "") + word.apply("reading", placed.reading()) + " is "
                    + spaced(placed.side()) + " the limit \""
                    + knowledge.limits().get(placed.limit()).name() + "\"";
        }
        if (when instanceof When.ModelSays says) {
            return "the model says: " + word.apply("model.says", says.finding());
        }
        if (when instanceof When.WentIn went) {
            return any(went.anyOf(), t -> word.apply("trait", t)) + " went in";
        }
        if (when instanceof When.Helped helped) {
            return any(helped.anyOf(), this::step) + " helped";
        }
        if (when instanceof When.Failed failed) {
            return any(failed.anyOf(), this::step) + " did not help";
        }
        KeepOutClass kind = ((When.KeptOut) when).kind();
        return knowledge.keepOuts().get(kind).name() + " went in";
    }

    private String step(Remedy remedy) {
        return "\"" + knowledge.remedies().get(remedy).name() + "\"";
    }

    private static <T> String any(List<T> several, Function<T, String> each) {
        return several.stream().map(each).collect(Collectors.joining(" or "));
    }

    private static String clause(String sentence) {
        String begun = sentence.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + sentence.substring(1);
        return begun.endsWith(".") ? begun.substring(0, begun.length() - 1) : begun;
    }

    private static String spaced(Id id) {
        return id.id().replace('-', ' ');
    }
}
