/**
 * What went into a pile and what that makes: mass balance of water, carbon and nitrogen, density and air space.
 *
 * <p>Pure functions. Figures of materials come in as {@link heapwright.knowledge.Material}; constants of published
 * equations stand once, in {@link heapwright.process.mixture.Equations},
 * {@link heapwright.process.mixture.FreeAirSpace} and {@link heapwright.process.mixture.Degradability}.
 */
package heapwright.process.mixture;
