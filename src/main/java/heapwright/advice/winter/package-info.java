/**
 * The process model put to use on a pile of a file: what its recipe, bin, weather and record mean to the model; what the
 * past course says; what lies ahead; and what each step would win.
 */
package heapwright.advice.winter;
