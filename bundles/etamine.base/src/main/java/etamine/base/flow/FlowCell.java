package etamine.base.flow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A node in its column, or the passage of a link through a column. */
final class FlowCell {
    final String id;
    final int layer;
    final long amount;
    final boolean falls;
    final int labelWidth;
    final int labelHeight;
    final List<Strand> in = new ArrayList<>();
    final List<Strand> out = new ArrayList<>();
    int y;
    int band;
    int height;

    /** A link between neighbouring columns. */
    static final class Strand {
        final FlowCell from;
        final FlowCell to;
        final long amount;
        int thickness;
        int fromY;
        int toY;

        Strand(FlowCell from, FlowCell to, long amount) {
            this.from = from;
            this.to = to;
            this.amount = amount;
            from.out.add(this);
            to.in.add(this);
        }
    }

    FlowCell(Flow.Node node) {
        this(node.id(), node.layer(), node.amount(), node.falls(), node.labelWidth(), node.labelHeight());
    }

    /** A passage through a column. */
    FlowCell(int layer, long amount, boolean falls) {
        this("", layer, amount, falls, 0, 0);
    }

    private FlowCell(String id, int layer, long amount, boolean falls, int labelWidth, int labelHeight) {
        this.id = id;
        this.layer = layer;
        this.amount = amount;
        this.falls = falls;
        this.labelWidth = labelWidth;
        this.labelHeight = labelHeight;
    }

    /** Takes the thickness that its amount has at that scale, and the height that its label asks for. */
    void scale(double perAmount) {
        band = Math.max(1, (int) Math.round(amount * perAmount));
        height = band >= labelHeight ? band : band + labelHeight;
    }

    int bandY() {
        return y + height - band;
    }

    int middle() {
        return bandY() + band / 2;
    }

    /** Where its neighbours on one side would have its middle; where it is when it has none. */
    double wished(boolean fromLeft) {
        double sum = 0;
        double weight = 0;
        for (Strand strand : fromLeft ? in : out) {
            double amount = Math.max(1, strand.amount);
            sum += amount * (fromLeft ? strand.from : strand.to).middle();
            weight += amount;
        }
        return weight == 0 ? middle() : sum / weight;
    }

    /** Lays its strands beside one another over its band, in the order of what they lead to. */
    void spread(double perAmount) {
        out.sort(Comparator.comparingInt(strand -> strand.to.middle()));
        in.sort(Comparator.comparingInt(strand -> strand.from.middle()));
        double down = bandY();
        for (Strand strand : out) {
            strand.thickness = Math.max(1, (int) Math.round(strand.amount * perAmount));
            strand.fromY = (int) Math.round(down);
            down += strand.amount * perAmount;
        }
        down = bandY();
        for (Strand strand : in) {
            strand.toY = (int) Math.round(down);
            down += strand.amount * perAmount;
        }
    }
}
