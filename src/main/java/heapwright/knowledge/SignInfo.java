package heapwright.knowledge;

import java.util.List;
import java.util.Optional;

/**
 * What the table of signs says of one sign.
 *
 * @param id the sign
 * @param sense the sense or topic under which it is asked
 * @param ask the question, answered yes, no or don't know
 * @param say the statement when the answer is yes
 * @param deny the statement when the answer is no
 * @param how how to check it, in one line
 * @param shortName two to four words
 * @param aliases what people also say
 * @param moisturePct the moisture it stands for when the hand says it, percent of wet mass
 */
public record SignInfo(
        Sign id,
        Sense sense,
        String ask,
        String say,
        String deny,
        String how,

        @com.fasterxml.jackson.annotation.JsonProperty("short")
        String shortName,

        List<String> aliases,
        Optional<Figure> moisturePct) {

    /** The sense or topic under which a sign is asked. */
    public enum Sense implements Id {
        NOSE,
        HAND,
        WARMTH,
        EYE,
        VISITORS,
        INPUTS,
        PLACE
    }
}
