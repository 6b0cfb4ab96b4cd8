package heapwright.pile;

/**
 * A place in the text of a document.
 *
 * @param offset characters from the start, for sorting
 * @param line line number from 1
 */
record TextPosition(long offset, int line) {

    static final TextPosition START = new TextPosition(0, 1);
}
