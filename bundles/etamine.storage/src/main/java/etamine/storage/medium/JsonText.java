package etamine.storage.medium;

/** Writes text as a JSON string. */
final class JsonText {
    private JsonText() {}

    static String quote(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(character -> {
            if (character == '"' || character == '\\') {
                quoted.append('\\').append((char) character);
            } else if (character < ' ') {
                quoted.append(String.format("\\u%04x", character));
            } else {
                quoted.append((char) character);
            }
        });
        return quoted.append('"').toString();
    }
}
