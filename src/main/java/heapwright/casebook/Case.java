package heapwright.casebook;

import heapwright.knowledge.Known;
import heapwright.pile.Pile;

/**
 * A pile with what the advice on it must be.
 *
 * @param file where it stands, below the folder of cases
 * @param says the case in a sentence
 * @param source key of the source, "COMMON", or "INVENTED" for the demo
 * @param row the row of the source's table, or empty
 * @param known how the source is known
 * @param pile the pile
 * @param expect what the advice must be
 */
public record Case(String file, String says, String source, String row, Known known, Pile pile, Expectation expect) {}
