/** How much the server does at once: what waits, what is turned away for now, and what is answered whatever the load. */
package heapwright.web.work;
