/**
 * Pile files in a folder on disk: listed, opened, saved without loss, put aside and fetched back.
 *
 * <p>Knows pile documents and nothing of rules, advice or doors. See {@code docs/decisions/journal.md} for why it works
 * as it does.
 */
package heapwright.journal;
