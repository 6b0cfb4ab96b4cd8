/** Understands what a person types in their own words: signs, ages, lengths. It asks rather than guesses. */
package heapwright.phrase;
