/** How much compost there is, what it covers, and how long to wait. */
package heapwright.process.use;
