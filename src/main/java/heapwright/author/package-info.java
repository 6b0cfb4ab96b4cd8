/** For those who write tables, rows and rules: what is at fault in them and what a change would do, before any build. */
package heapwright.author;
