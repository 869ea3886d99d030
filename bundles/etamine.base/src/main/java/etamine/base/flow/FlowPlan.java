package etamine.base.flow;

import java.util.List;

/**
 * A flow in its place. No node or label lies on another, and no ribbon crosses a label.
 *
 * @param width what it takes, which may be more than the room there was
 * @param height what it takes, which may be more than the room there was
 * @param places one for each node, in the order of the nodes
 * @param ribbons one for each link, in the order of the links
 */
public record FlowPlan(int width, int height, List<Place> places, List<Ribbon> ribbons) {

    /** Copies the lists. */
    public FlowPlan {
        places = List.copyOf(places);
        ribbons = List.copyOf(ribbons);
    }

    /**
     * Where a node is: a band as thick as its flow, with its label on it where it is thick enough, else above it.
     *
     * @param id the node's identifier
     * @param x the left edge of the band and the label
     * @param y the upper edge of the place
     * @param width the width of the band
     * @param height the height of band and label together
     * @param bandY the upper edge of the band
     * @param band the thickness of the band, at least 1
     * @param labelY the upper edge of the label
     */
    public record Place(String id, int x, int y, int width, int height, int bandY, int band, int labelY) {}

    /**
     * Where a link flows.
     *
     * @param thickness how thick it is, at least 1
     * @param reaches its parts from left to right; each begins at the height where the one before ended
     */
    public record Ribbon(int thickness, List<Reach> reaches) {

        /** Copies the list. */
        public Ribbon {
            reaches = List.copyOf(reaches);
        }
    }

    /** Part of a ribbon by the upper corners of its ends; curved where it changes its height. */
    public record Reach(int fromX, int fromY, int toX, int toY) {}
}
