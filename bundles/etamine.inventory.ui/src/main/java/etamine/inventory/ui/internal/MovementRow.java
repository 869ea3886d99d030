package etamine.inventory.ui.internal;

/**
 * One movement as text.
 *
 * @param id the movement
 * @param at when, on the house's clock
 * @param kind by which door
 * @param quantity how much, with its sign
 * @param place where
 * @param note what it belongs to
 * @param standing whether it can still be taken back
 */
record MovementRow(String id, String at, String kind, String quantity, String place, String note, boolean standing) {}
