package heapwright.pile;

/**
 * Something the reader took for granted, worth telling but no reason to refuse the document.
 *
 * @param pointer where, an RFC 6901 JSON Pointer
 * @param text what was taken for granted, one sentence
 */
public record Note(String pointer, String text) {}
