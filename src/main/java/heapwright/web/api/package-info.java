/** The same things for programs: JSON, with problems told as RFC 9457 says. */
package heapwright.web.api;
