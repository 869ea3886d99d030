package etamine.inventory.ui.internal;

/**
 * One lot as text.
 *
 * @param key what tells it apart
 * @param place where it lies
 * @param mark the mark on it
 * @param quantity how much
 * @param useBy its marked day
 * @param cost what it cost
 * @param due whether its day is today or past
 */
record LotRow(String key, String place, String mark, String quantity, String useBy, String cost, boolean due) {}
