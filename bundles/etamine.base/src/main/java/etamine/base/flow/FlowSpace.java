package etamine.base.flow;

/**
 * The room there is.
 *
 * @param width the width to fill where labels allow
 * @param height the height to fill where labels allow
 * @param gap between nodes of a column
 * @param reach the least width between columns
 */
public record FlowSpace(int width, int height, int gap, int reach) {}
