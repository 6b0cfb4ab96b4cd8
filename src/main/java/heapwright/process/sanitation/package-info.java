/** How hot a pile was for how long by its record, and what published rules and trials say of such heat. */
package heapwright.process.sanitation;
