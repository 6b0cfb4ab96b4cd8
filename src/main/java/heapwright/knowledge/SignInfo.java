package heapwright.knowledge;

import heapwright.pile.Action;
import heapwright.pile.Container;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * What the table of signs says of one sign.
 *
 * @param id the sign
 * @param sense the sense or topic under which it is asked
 * @param where where a person must go to answer it
 * @param lasts how long an answer holds
 * @param met how often it is met at home piles, as far as nothing else is known
 * @param brings the traits of what went in, if it did: a yes counts like a line in the record of unknown amount
 * @param changedBy what, done after an answer, most likely changed it: the answer then counts little
 * @param changedWith traits of stuff that does so when it goes in after an answer
 * @param ask the question, answered yes, no or don't know
 * @param say the statement when the answer is yes
 * @param deny the statement when the answer is no
 * @param how how to check it, in one line
 * @param howInABox how to check it in a drum or a box of worms, where a fork has no place; empty where it is the same
 * @param shortName two to four words
 * @param aliases what people also say
 * @param moisturePct the moisture it stands for when the hand says it, percent of wet mass
 */
public record SignInfo(
        Sign id,
        Sense sense,
        Where where,
        Lasts lasts,
        Met met,
        List<Trait> brings,
        List<Action> changedBy,
        List<Trait> changedWith,
        String ask,
        String say,
        String deny,
        String how,
        Optional<String> howInABox,
        String shortName,
        List<String> aliases,
        Optional<Figure> moisturePct) {
    private static final Set<Container.Kind> BOXES =
            EnumSet.of(Container.Kind.TUMBLER, Container.Kind.WORM_BIN, Container.Kind.BOKASHI);

    /** How to check it where the pile is of this kind, in one line. */
    public String how(Container.Kind kind) {
        return BOXES.contains(kind) ? howInABox.orElse(how) : how;
    }

    /** The same with its sentences put another way; ids, names and figures stay. */
    SignInfo reworded(UnaryOperator<String> wording) {
        return new SignInfo(
                id,
                sense,
                where,
                lasts,
                met,
                brings,
                changedBy,
                changedWith,
                wording.apply(ask),
                wording.apply(say),
                wording.apply(deny),
                wording.apply(how),
                howInABox.map(wording),
                shortName,
                aliases,
                moisturePct);
    }

    /** How often a sign is met; the chances are judgement and only order the questions. */
    public enum Met implements Id {
        SELDOM(0.006),
        SOMETIMES(0.03),
        OFTEN(0.1);

        private final double chance;

        Met(double chance) {
            this.chance = chance;
        }

        /** The chance of a yes, 0 to 1, as far as nothing else is known. */
        public double chance() {
            return chance;
        }
    }

    /** How long an answer holds. */
    public enum Lasts implements Id {
        /** First aid is a matter of the first days. */
        DAYS,
        /** As long as the limit for answers says: a pile changes. */
        WEEKS,
        /** Until it is answered the other way. */
        ALWAYS
    }

    /** Where a person must go to answer a question. */
    public enum Where implements Id {
        /** From memory, from a distance and upwind, or by looking round: the pile is not touched and not come close to. */
        OUTSIDE,
        /** Close by, without opening, poking or touching it. */
        AT_THE_PILE,
        /** By opening it, by hand or with a rod, or with a sample of it. */
        INSIDE
    }

    /** The sense or topic under which a sign is asked. */
    public enum Sense implements Id {
        /** Somebody is hurt or ill: asked before all else. */
        INCIDENT,
        NOSE,
        HAND,
        WARMTH,
        EYE,
        VISITORS,
        INPUTS,
        PLACE,
        PEOPLE
    }
}
