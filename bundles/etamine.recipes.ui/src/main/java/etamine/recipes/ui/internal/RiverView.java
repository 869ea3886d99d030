package etamine.recipes.ui.internal;

import etamine.recipes.River;
import etamine.widgets.RiverDrawing;
import java.util.List;

/**
 * A river as the page shows it.
 *
 * @param river all of it
 * @param drawn what of it is drawn: crowds joined
 * @param title what the picture shows
 * @param pools the places of the picture
 * @param streams the ribbons of the picture
 * @param rows the table beside it
 * @param notes what could not be weighed and what had to be supposed, as sentences
 */
record RiverView(
        River river,
        River drawn,
        String title,
        List<RiverDrawing.Pool> pools,
        List<RiverDrawing.Stream> streams,
        List<RiverRow> rows,
        List<String> notes) {}
