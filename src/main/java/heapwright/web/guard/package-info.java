/** What keeps the server to its own pages: who may ask, from where, and what a browser may do with the answers. */
package heapwright.web.guard;
