/**
 * The page: a small server on this machine that writes HTML, and the same things as a JSON interface.
 *
 * <p>Pages are made here from the answers of the shared {@link heapwright.advice.Advisor}; nothing is reasoned here.
 * See {@code docs/decisions/page.md} for the libraries and for what keeps the server safe.
 */
package heapwright.web;
