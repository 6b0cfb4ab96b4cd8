package heapwright.advice.fact;

import heapwright.knowledge.Material;

/**
 * A material of the recipe that the tables bar from a home pile, and how firmly.
 *
 * @param bar how firmly
 * @param material its id
 * @param byDose whether it harms only by how much of it goes in, which is judged elsewhere
 */
public record Barred(Material.Bar bar, String material, boolean byDose) {}
