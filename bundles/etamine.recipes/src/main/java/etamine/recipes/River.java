package etamine.recipes;

import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * What flows from what was bought to what a recipe gives, exact. At every node that things go into and come out of, what
 * comes in is what goes out.
 *
 * @param recipe whose river
 * @param name its name
 * @param gives how much of its first output the river ends in, such as one portion
 * @param nodes what the flow passes, from left to right
 * @param links the flow between them; each from a node of a lower layer to one of a higher
 * @param unweighed what takes part and could not be weighed, so that it is in no link
 * @param remarks what had to be supposed, as sentences
 */
public record River(
        String recipe,
        String name,
        Quantity gives,
        List<Node> nodes,
        List<Link> links,
        List<Unweighed> unweighed,
        List<String> remarks) {

    private static final Ratio BILLION = Ratio.of(1_000_000_000);

    /** Copies the lists. */
    public River {
        nodes = List.copyOf(nodes);
        links = List.copyOf(links);
        unweighed = List.copyOf(unweighed);
        remarks = List.copyOf(remarks);
    }

    /** What a node is. */
    public enum Kind {
        /** Something bought, as purchased. */
        BOUGHT("bought"),
        /** Water that a recipe says it takes up. */
        WATER("water taken up"),
        /** What comes out beyond all that is written to go in. */
        UNWRITTEN("not written down"),
        /** A recipe at work. */
        MADE("made"),
        /** What the river ends in. */
        SERVED("served"),
        /** What trimming takes away. */
        TRIM("trimmed"),
        /** What cooking, reducing or taking apart takes away. */
        LOST("lost"),
        /** What is spilt and left in the bottle. */
        SPILT("spilt"),
        /** Outputs that other recipes of the book use. */
        ELSEWHERE("other uses"),
        /** Outputs that nothing in the book uses. */
        LEFT_OVER("left over");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** As people read it. */
        public String inWords() {
            return words;
        }

        /** Whether it flows in without having been made here. */
        public boolean source() {
            return this == BOUGHT || this == WATER || this == UNWRITTEN;
        }

        /** Whether it falls away and is not used by anybody. */
        public boolean loss() {
            return this == TRIM || this == LOST || this == SPILT || this == LEFT_OVER;
        }

        /** Whether the flow ends in it. */
        public boolean end() {
            return this == SERVED || this == ELSEWHERE || loss();
        }
    }

    /**
     * One node.
     *
     * @param id its identifier within the river
     * @param kind what it is
     * @param name what it is called
     * @param subject the item bought or recipe made that it stands for
     * @param layer its place from the left; 0 is leftmost
     * @param amount what flows through it: for sources what goes out, for all others what comes in
     */
    public record Node(String id, Kind kind, String name, String subject, int layer, Quantity amount) {}

    /**
     * Some of the flow.
     *
     * @param from the node it leaves
     * @param to the node it comes to
     * @param what what flows, by name
     * @param amount how much
     */
    public record Link(String from, String to, String what, Quantity amount) {}

    /**
     * Something that could not be weighed.
     *
     * @param recipe the recipe it stands in, by name
     * @param line the line or output as written
     * @param why what is missing, as a sentence that says what to do
     */
    public record Unweighed(String recipe, String line, String why) {}

    /**
     * The same river with at most about so many nodes in each layer: the smallest of what flows in or falls away are
     * joined. Everything stays in it; what goes into a node is still what comes out.
     */
    public River gathered(int most) {
        return new RiverGathering(this, most).run();
    }

    /** Some of the flow in billionths of the thickest node, at least 1: the scale to draw it on. */
    public long part(Quantity amount) {
        Ratio most = nodes.stream()
                .map(node -> node.amount().amount())
                .max(Ratio::compareTo)
                .orElse(Ratio.ONE);
        Ratio part = amount.amount().dividedBy(most).times(BILLION);
        return Math.max(1, part.toWhole(RoundingMode.HALF_UP));
    }

    /** The node of that identifier. */
    public Optional<Node> node(String id) {
        return nodes.stream().filter(node -> node.id().equals(id)).findFirst();
    }

    /** What comes into a node, in the order of the links. */
    public List<Link> into(String node) {
        return links.stream().filter(link -> link.to().equals(node)).toList();
    }

    /** What goes out of a node, in the order of the links. */
    public List<Link> outOf(String node) {
        return links.stream().filter(link -> link.from().equals(node)).toList();
    }
}
