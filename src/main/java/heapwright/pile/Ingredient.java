package heapwright.pile;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * One material put into a pile.
 *
 * @param material id of a material, from the knowledge base or from the file's own {@code materials}
 * @param amount how much
 * @param pieceCm usual length of the pieces in centimetres, if stated
 * @param chopped whether it was chopped or shredded before it went in
 * @param date the day it went in
 */
public record Ingredient(String material, Amount amount, OptionalDouble pieceCm, boolean chopped, LocalDate date) {}
