/** What the year outdoors is like where a pile stands. */
package heapwright.process.climate;
