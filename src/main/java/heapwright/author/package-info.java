/** For those who write tables, rows and rules: what is at fault in them, told before any build. */
package heapwright.author;
