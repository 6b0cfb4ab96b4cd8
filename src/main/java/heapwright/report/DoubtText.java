package heapwright.report;

import heapwright.advice.observe.MoistureDoubt;
import heapwright.knowledge.Limit;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.SizeDoubt;
import java.util.ArrayList;
import java.util.List;

/** Tells which figures of a pile cannot both be right. */
record DoubtText(Words words) {

    /** What the person should look at again; a paragraph each. */
    List<String> of(Pile pile) {
        Figures figures = words.figures();
        List<String> all = new ArrayList<>();
        SizeDoubt.of(pile, Materials.of(words.knowledge().materials(), pile.materials()))
                .ifPresent(d -> all.add(words.text(
                        "check.size",
                        figures.pileVolume(d.toldM3()),
                        figures.mass(d.kilograms()),
                        figures.span(figures.pileVolume(d.settledM3()), figures.pileVolume(d.looseM3())))));
        double fresh = pile.limits()
                .getOrDefault(
                        Limit.ANSWER_FRESH.id(),
                        words.knowledge().limits().get(Limit.ANSWER_FRESH).value());
        MoistureDoubt.of(pile, words.knowledge(), (int) fresh)
                .ifPresent(d -> all.add(words.text(
                        "check.moisture",
                        figures.number(d.measuredPct(), 0),
                        words.says(d.felt()),
                        figures.number(d.lowPct(), 0),
                        figures.number(d.highPct(), 0))));
        return all;
    }
}
