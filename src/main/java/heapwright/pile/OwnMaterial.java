package heapwright.pile;

import java.util.OptionalDouble;

/**
 * A material described in the pile file: a new one, or the person's own figures for a known one.
 *
 * @param id its id in this file; the id of a known material overrides that material's figures
 * @param like id of the known material whose other figures it takes; its own id when it overrides a known one
 * @param name what the person calls it; its id if not stated
 * @param carbonToNitrogen C:N by mass of dry matter, if stated
 * @param carbonPct carbon, percent of dry mass, if stated
 * @param nitrogenPct nitrogen, percent of dry mass, if stated
 * @param moisturePct moisture, percent of wet mass, if stated
 * @param densityKgM3 bulk density as it lies, kg per cubic metre, if stated
 */
public record OwnMaterial(
        String id,
        String like,
        String name,
        OptionalDouble carbonToNitrogen,
        OptionalDouble carbonPct,
        OptionalDouble nitrogenPct,
        OptionalDouble moisturePct,
        OptionalDouble densityKgM3) {}
