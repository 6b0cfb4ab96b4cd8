package heapwright.advice;

import heapwright.knowledge.UsualDose;
import heapwright.process.dose.Term;
import java.util.List;

/**
 * What a home remedy that people give without reckoning amounts to in this pile.
 *
 * @param dose the home remedy
 * @param figures what it brings, against what the pile needs
 * @param asked whether one of the causes that people give it for stands here
 */
public record HomeRemedy(UsualDose dose, List<Term> figures, boolean asked) {
    public HomeRemedy {
        figures = List.copyOf(figures);
    }
}
