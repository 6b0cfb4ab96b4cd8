package heapwright.advice.fact;

/** What a person found about one matter does not fit together; nothing is given on that side until they have looked again. */
public record Disputed(Matter matter) {}
