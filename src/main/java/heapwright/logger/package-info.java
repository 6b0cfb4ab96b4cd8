/**
 * The file of a temperature logger: read as it comes, told by the day, with everything named that was left out.
 *
 * <p>Knows the units of the pile document and nothing else. See {@code docs/decisions/logger.md}.
 */
package heapwright.logger;
