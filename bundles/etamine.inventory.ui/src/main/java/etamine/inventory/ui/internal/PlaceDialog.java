package etamine.inventory.ui.internal;

import etamine.widgets.EditGrid;
import etamine.widgets.FormDialog;
import etamine.widgets.GridColumn;
import java.util.List;
import org.eclipse.swt.widgets.Shell;

/** The places of the house, each line saved when it is left. */
final class PlaceDialog {
    private final PlacesModel model;

    PlaceDialog(PlacesModel model) {
        this.model = model;
    }

    void open(Shell parent) {
        new FormDialog(parent, "Places", form -> {
                    form.remark("In the order of the walk round the kitchen. Empty a line to remove its place.");
                    EditGrid grid = form.wide(cell -> new EditGrid(
                            cell,
                            "grid:places",
                            List.of(GridColumn.entry("Place", 6), GridColumn.entry("Walk", 2)),
                            (about, row, cells) -> model.save(row, cells.get(0), cells.get(1))));
                    grid.show("places", model.rows());
                })
                .closeOnly()
                .ask();
    }
}
