package etamine.base.flow;

import java.util.List;

/**
 * What flows where.
 *
 * @param nodes what the flow passes
 * @param links the flow between them, each from a lower layer to a higher one
 */
public record Flow(List<Node> nodes, List<Link> links) {

    /** Copies the lists. */
    public Flow {
        nodes = List.copyOf(nodes);
        links = List.copyOf(links);
    }

    /**
     * One node.
     *
     * @param id its identifier
     * @param layer its column; 0 is leftmost
     * @param amount how much flows through it, on the scale that all amounts share
     * @param falls whether it is kept below the others of its column
     * @param labelWidth the width that its label takes
     * @param labelHeight the height that its label takes
     */
    public record Node(String id, int layer, long amount, boolean falls, int labelWidth, int labelHeight) {}

    /**
     * Flow from one node to another.
     *
     * @param from where it leaves
     * @param to where it arrives
     * @param amount how much
     */
    public record Link(String from, String to, long amount) {}
}
