package heapwright.pile;

import java.util.Optional;

/**
 * A material at hand for mending a recipe.
 *
 * @param material id of the material
 * @param available how much there is; empty when as much as needed can be had
 */
public record Stock(String material, Optional<Amount> available) {}
