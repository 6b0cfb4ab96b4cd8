package heapwright.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a person says to a plain question at the terminal; only a whole answer counts, never a part of one. */
enum Reply {
    YES("y", "yes", "yep", "yeah", "yup"),
    NO("n", "no", "nope", "nah"),
    /** They do not know, or do not want to say. */
    UNKNOWN(
            "",
            "?",
            "don't know",
            "dont know",
            "do not know",
            "i don't know",
            "i dont know",
            "i do not know",
            "dunno",
            "i dunno",
            "no idea",
            "not sure",
            "i'm not sure",
            "im not sure",
            "i am not sure",
            "unsure",
            "can't say",
            "cant say",
            "can't tell",
            "cant tell",
            "skip",
            "pass"),
    /** They want the advice so far; so does who closes the terminal. */
    STOP("s", "stop", "q", "quit", "exit"),
    OTHER;

    private final Set<String> said;

    Reply(String... said) {
        this.said = Set.of(said);
    }

    /** What an answer is; empty where nothing more comes. */
    static Reply of(Optional<String> told) {
        if (told.isEmpty()) {
            return STOP;
        }
        String plain = told.get()
                .strip()
                .toLowerCase(Locale.ROOT)
                .replace('\u2019', '\'')
                .replaceAll("[.!]+$", "");
        for (Reply reply : values()) {
            if (reply.said.contains(plain)) {
                return reply;
            }
        }
        return OTHER;
    }
}
