package heapwright.pile;

/**
 * A place in the text of a document.
 *
 * @param offset characters from the start, for sorting
 * @param line line number from 1
 */
record Spot(long offset, int line) {

    static final Spot START = new Spot(0, 1);
}
