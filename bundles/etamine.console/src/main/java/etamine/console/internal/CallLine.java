package etamine.console.internal;

import etamine.base.verb.VerbException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A typed line with what concerns the console itself taken out; that may stand anywhere before {@code --}.
 *
 * @param book where the book is, when said
 * @param json whether to print JSON
 * @param quiet whether to print nothing but failures
 * @param help whether to explain instead of doing
 * @param version whether to say the version instead of doing
 * @param words the verb and what belongs to it
 */
record CallLine(Optional<String> book, boolean json, boolean quiet, boolean help, boolean version, List<String> words) {
    private static final String BOOK = "--book";

    /** Takes a line apart. */
    static CallLine of(List<String> line) throws VerbException {
        Reader reader = new Reader();
        for (int i = 0; i < line.size(); i++) {
            String word = line.get(i);
            if (word.equals("--")) {
                reader.words.addAll(line.subList(i, line.size()));
                break;
            }
            if (word.equals(BOOK)) {
                i++;
                reader.book = Optional.of(value(line, i));
            } else {
                reader.take(word);
            }
        }
        return reader.line();
    }

    private static String value(List<String> line, int at) throws VerbException {
        if (at >= line.size() || line.get(at).startsWith("--") || line.get(at).isBlank()) {
            throw VerbException.wrongCall("Say after " + BOOK + " where the book is: a file, or a jdbc: address.");
        }
        return line.get(at);
    }

    private static final class Reader {
        private Optional<String> book = Optional.empty();
        private boolean json;
        private boolean quiet;
        private boolean help;
        private boolean version;
        private final List<String> words = new ArrayList<>();

        private void take(String word) {
            if (word.startsWith(BOOK + '=')) {
                book = Optional.of(word.substring(BOOK.length() + 1));
                return;
            }
            switch (word) {
                case "--json" -> json = true;
                case "--quiet" -> quiet = true;
                case "--help", "-h" -> help = true;
                case "--version" -> version = true;
                default -> words.add(word);
            }
        }

        private CallLine line() {
            if (!words.isEmpty() && words.get(0).equals("help")) {
                return new CallLine(book, json, quiet, true, version, List.copyOf(words.subList(1, words.size())));
            }
            return new CallLine(book, json, quiet, help, version, List.copyOf(words));
        }
    }
}
