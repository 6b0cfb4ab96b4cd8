package heapwright.phrase;

import static java.util.Map.entry;

import heapwright.knowledge.Sign;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What people say that is no name of one sign and could mean several: always asked, never taken. */
final class SeveralMeanings {

    private static final String NEVER = "never";
    private static final List<Sign> IDLE = List.of(Sign.NEVER_HEATED, Sign.HEATED_THEN_COOLED, Sign.NOT_SHRINKING);
    private static final List<Sign> WEEDS = List.of(Sign.SPROUTING, Sign.WEEDS_WHERE_USED, Sign.WEEDS_WITH_SEED);
    private static final List<Sign> CREEPERS = List.of(Sign.ROOTS_GROWING_IN, Sign.CREEPING_ROOTS, Sign.SPROUTING);
    private static final List<Sign> COVERED = List.of(Sign.SEALED_UNDER_PLASTIC);

    private static final Map<String, List<Sign>> TOLD = Map.ofEntries(
            entry("wet", List.of(Sign.SOGGY, Sign.SQUEEZE_STREAMS, Sign.PATCHY_MOISTURE, Sign.LOW_WET_GROUND)),
            entry("dry", List.of(Sign.DUST_DRY, Sign.SQUEEZE_CRUMBLES, Sign.DRY_UNDER_DAMP_SKIN, Sign.PATCHY_MOISTURE)),
            entry("hot", List.of(Sign.CORE_HOT, Sign.UNEVEN_HEAT)),
            entry("warm", List.of(Sign.CORE_WARM, Sign.WARM_ONLY_IN_MIDDLE)),
            entry(
                    "cold",
                    List.of(Sign.CORE_COLD, Sign.HEATED_THEN_COOLED, Sign.NEVER_HEATED, Sign.NO_REHEAT_AFTER_TURNING)),
            entry("cool", List.of(Sign.CORE_COLD, Sign.HEATED_THEN_COOLED, Sign.COOLING_FOR_DAYS)),
            entry("sick", List.of(Sign.SOMEONE_DIZZY, Sign.SMELLS_SOUR, Sign.DISEASED_TOPS)),
            entry("not well", List.of(Sign.SOMEONE_DIZZY, Sign.FEVER_AFTER_DUST)),
            entry("not feeling well", List.of(Sign.SOMEONE_DIZZY, Sign.FEVER_AFTER_DUST)),
            entry("nothing happens", IDLE),
            entry("not doing anything", IDLE),
            entry("doing nothing", IDLE),
            entry("not done anything", IDLE),
            entry("no change", IDLE),
            entry("never took off", IDLE),
            entry("just sits there", IDLE),
            entry("stopped", IDLE),
            entry("stopped working", IDLE),
            entry("not working", IDLE),
            entry("not heating", List.of(Sign.NEVER_HEATED, Sign.HEATED_THEN_COOLED, Sign.NO_REHEAT_AFTER_TURNING)),
            entry("not rotting", List.of(Sign.ORIGINALS_VISIBLE, Sign.NOT_SHRINKING)),
            entry("fungus", List.of(Sign.MOULD, Sign.MUSHROOMS)),
            entry("ash", List.of(Sign.ASH_OR_LIME, Sign.COAL_ASH, Sign.ASH_GREY_ZONES)),
            entry("weeds", WEEDS),
            entry("bindweed", CREEPERS),
            entry("bindweed growing", CREEPERS),
            entry("bindweed coming", CREEPERS),
            entry("collapsed", List.of(Sign.SOMEONE_COLLAPSED, Sign.SLUMPED_DENSE)),
            entry("no air", List.of(Sign.SEALED_UNDER_PLASTIC, Sign.SLUMPED_DENSE)),
            entry("airless", List.of(Sign.SEALED_UNDER_PLASTIC, Sign.SLUMPED_DENSE)),
            entry("burning", List.of(Sign.GLOW, Sign.SOMEONE_BURNT, Sign.CHARRED, Sign.SMELLS_BURNT)),
            entry("embers", List.of(Sign.GLOW, Sign.ASH_WARM)),
            entry("woody", List.of(Sign.LONG_UNCUT_PIECES, Sign.WOODY_RESIDUE)),
            entry("woody bits", List.of(Sign.LONG_UNCUT_PIECES, Sign.WOODY_RESIDUE)),
            entry("tarp", COVERED),
            entry("under tarp", COVERED),
            entry("covered tarp", COVERED),
            entry("tarpaulin", COVERED));

    private static final Map<Set<String>, List<Sign>> BY_WORDS = byWords();

    private SeveralMeanings() {}

    /** The signs that can be meant, if it is just one of these sayings. */
    static Optional<List<Sign>> of(Phrase saying) {
        return Optional.ofNullable(BY_WORDS.get(saying.telling()));
    }

    /** The signs that can be meant, if it is one of these sayings but for what tells when and how much. */
    static Optional<List<Sign>> about(Phrase saying) {
        // "Never got going": no word of it names anything, and yet it is not "nothing to tell".
        if (saying.words().contains(NEVER) && SmallWords.DEGREE.containsAll(saying.content())) {
            return Optional.of(IDLE);
        }
        return Optional.ofNullable(BY_WORDS.get(saying.without(SmallWords.DEGREE)));
    }

    private static Map<Set<String>, List<Sign>> byWords() {
        Map<Set<String>, List<Sign>> byWords = new HashMap<>();
        TOLD.forEach((told, signs) -> byWords.put(new Phrase(told).telling(), signs));
        return byWords;
    }
}
