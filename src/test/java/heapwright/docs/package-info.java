/** Writes the papers that are made from tables, rules and the program's own output, and keeps them in step. */
package heapwright.docs;
