package heapwright.process.mixture;

/**
 * The mass balance of a mixture, kg. At the likely values wet is dry and water together, and dry is volatile solids and
 * ash together; the ends are percentiles of each by itself and need not add up.
 *
 * @param wet mass as it is
 * @param dry dry mass
 * @param water water
 * @param carbon carbon
 * @param reachableCarbon carbon that asks for nitrogen within a season: all of it, of wood only the degradable part
 * @param degradableCarbon carbon that can decay within a season
 * @param nitrogen nitrogen
 * @param volatileSolids organic matter
 * @param ash mineral matter
 */
public record Masses(
        Band wet,
        Band dry,
        Band water,
        Band carbon,
        Band reachableCarbon,
        Band degradableCarbon,
        Band nitrogen,
        Band volatileSolids,
        Band ash) {}
