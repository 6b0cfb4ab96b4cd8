package heapwright.advice.fact;

/** An audit rule's judgement of a recipe; the rule's rationale says why. */
public record Judges(Topic topic, Mark mark) {}
