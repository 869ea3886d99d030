package etamine.documents.internal;

/** Text that a browser shows as it is, and that is well-formed as XML too. */
final class HtmlText {
    private HtmlText() {}

    static String escape(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.appendCodePoint(allowed(c) ? c : 0xFFFD);
            }
        });
        return escaped.toString();
    }

    /** The characters of XML 1.0, section 2.2. */
    static boolean allowed(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || c >= 0x20 && c <= 0xD7FF
                || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000;
    }
}
