package etamine.recipes.ui.internal;

import etamine.measures.Quantity;

/**
 * One flow of a river as a row.
 *
 * @param key what identifies it
 * @param place its place in the order of the river
 * @param from what it leaves
 * @param what what flows
 * @param to what it comes to, and what becomes of it there
 * @param amount how much, in words
 * @param exact how much
 * @param node the node that the picture shows for it
 */
record RiverRow(
        String key, int place, String from, String what, String to, String amount, Quantity exact, String node) {}
