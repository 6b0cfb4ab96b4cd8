/**
 * The process model of a compost pile through a winter: nested shells from core to skin that heat, freeze, dry, breathe,
 * decay and settle. A planning aid: reviewed models of this kind missed measured peaks by more than 5 °C (MASON06), so
 * every figure for a person comes with a band. Equations, constants and their sources: docs/method/heat.md.
 */
package heapwright.process.heat;
