package heapwright.advice.fact;

/** Something about the place, the container or the aim that the person stated. */
public record Has(Fixture fixture) {}
