package heapwright.web.site;

import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.phrase.AgePhrase;
import java.time.LocalDate;
import java.util.Optional;

/**
 * When a pile was built, as a person says it: a day, or how long ago. What is rough stays marked so.
 *
 * @param day the day
 * @param rough whether it was told only roughly
 */
record BuiltWhen(LocalDate day, boolean rough) {

    /** What is meant; empty where nothing was typed or it is not understood. */
    static Optional<BuiltWhen> of(String typed, LocalDate today) {
        return AgePhrase.day(typed, today).map(day -> new BuiltWhen(day, !AgePhrase.exact(typed)));
    }

    /** Puts it into a document. */
    void into(ObjectNode document) {
        document.put("built", day.toString());
        if (rough) {
            document.put("builtAbout", true);
        }
    }
}
