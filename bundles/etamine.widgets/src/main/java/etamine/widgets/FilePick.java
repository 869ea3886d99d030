package etamine.widgets;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** Asks for files with the dialog of the desktop. */
public final class FilePick {
    private FilePick() {}

    /**
     * A kind of file.
     *
     * @param label what people call it, such as {@code PDF}
     * @param ending its ending without the point, such as {@code pdf}
     */
    public record Kind(String label, String ending) {}

    /**
     * Asks where something is to be saved; asks again before a file is replaced. A name without one of the endings gets
     * that of the kind that was picked.
     *
     * @param name the name offered, without ending
     * @param kinds what can be written; the first is offered
     */
    public static Optional<Path> save(Shell parent, String title, String name, List<Kind> kinds) {
        FileDialog dialog = dialog(parent, SWT.SAVE, title, kinds.stream());
        dialog.setOverwrite(true);
        dialog.setFileName(fileName(name) + "." + kinds.get(0).ending());
        return Optional.ofNullable(dialog.open()).map(file -> ended(file, kinds, dialog.getFilterIndex()));
    }

    /** Asks which file is to be opened. */
    public static Optional<Path> open(Shell parent, String title, List<Kind> kinds) {
        FileDialog dialog =
                dialog(parent, SWT.OPEN, title, Stream.concat(kinds.stream(), Stream.of(new Kind("", "*"))));
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    /** A name without what file systems forbid in names. */
    static String fileName(String name) {
        String allowed =
                name.replaceAll("[\\\\/:*?\"<>|\\p{Cntrl}\\s]+", " ").strip().replaceAll("^[. ]+|[. ]+$", "");
        int end = Math.min(allowed.length(), 80);
        return allowed.isEmpty() ? "untitled" : allowed.substring(0, end).strip();
    }

    /** The file with one of the endings. */
    static Path ended(String file, List<Kind> kinds, int picked) {
        boolean has = kinds.stream().anyMatch(kind -> hasEnding(file, kind));
        Kind kind = kinds.get(Math.max(0, Math.min(picked, kinds.size() - 1)));
        return Path.of(has ? file : file + "." + kind.ending());
    }

    /** Whether the file's name says that it is of that kind. */
    public static boolean hasEnding(String file, Kind kind) {
        String ending = "." + kind.ending();
        int from = file.length() - ending.length();
        return from > 0 && file.regionMatches(true, from, ending, 0, ending.length());
    }

    private static FileDialog dialog(Shell parent, int style, String title, Stream<Kind> kinds) {
        Kind[] all = kinds.toArray(Kind[]::new);
        FileDialog dialog = new FileDialog(parent, style);
        dialog.setText(title);
        dialog.setFilterNames(Arrays.stream(all).map(FilePick::filterName).toArray(String[]::new));
        dialog.setFilterExtensions(Arrays.stream(all)
                .map(kind -> kind.ending().equals("*") ? "*" : "*." + kind.ending())
                .toArray(String[]::new));
        return dialog;
    }

    private static String filterName(Kind kind) {
        return kind.ending().equals("*") ? "All files" : kind.label() + " (*." + kind.ending() + ")";
    }
}
