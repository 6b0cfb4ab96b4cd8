package heapwright.advice.fact;

import heapwright.knowledge.Material;

/** A material of the recipe that the tables bar from a home pile, and how firmly. */
public record Barred(Material.Bar bar, String material) {}
