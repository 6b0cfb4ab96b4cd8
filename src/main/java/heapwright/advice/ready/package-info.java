/** Whether compost is ready, for what, how sure that is, and when: from what is on record and what the rules say of it. */
package heapwright.advice.ready;
