/** What there is to do at a pile, and round it, at each time of the year. */
package heapwright.advice.season;
