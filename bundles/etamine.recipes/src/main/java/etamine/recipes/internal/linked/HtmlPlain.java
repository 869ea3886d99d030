package etamine.recipes.internal.linked;

import java.util.Map;

/** Takes the words out of HTML in one pass: tags go, breaks become lines, entities become characters. */
final class HtmlPlain {
    private static final Map<String, String> ENTITIES = Map.ofEntries(
            Map.entry("amp", "&"),
            Map.entry("lt", "<"),
            Map.entry("gt", ">"),
            Map.entry("quot", "\""),
            Map.entry("apos", "'"),
            Map.entry("nbsp", " "),
            Map.entry("deg", "°"),
            Map.entry("frac12", "½"),
            Map.entry("frac14", "¼"),
            Map.entry("frac34", "¾"),
            Map.entry("ndash", "–"),
            Map.entry("mdash", "—"),
            Map.entry("rsquo", "’"),
            Map.entry("eacute", "é"),
            Map.entry("egrave", "è"),
            Map.entry("uuml", "ü"));

    private static final int LONGEST_ENTITY = 10;
    private static final int LONGEST_TAG = 2_000;

    private HtmlPlain() {}

    static String of(String html) {
        StringBuilder text = new StringBuilder();
        for (int at = 0; at < html.length(); at++) {
            char c = html.charAt(at);
            if (c == '<' && tagEnd(html, at) > 0) {
                int end = tagEnd(html, at);
                text.append(breaks(html.substring(at + 1, end)) ? "\n" : "");
                at = end;
            } else if (c == '&' && entityEnd(html, at) > 0) {
                int end = entityEnd(html, at);
                text.append(entity(html.substring(at + 1, end)));
                at = end;
            } else if (Character.isISOControl(c) && c != '\n') {
                text.append(' ');
            } else {
                text.append(c);
            }
        }
        return text.toString()
                .replaceAll("[ \\u00a0]+", " ")
                .replaceAll(" ?\\n[ \\n]*", "\n")
                .strip();
    }

    /** Where a tag ends; -1 when this is a mere less-than sign. */
    private static int tagEnd(String html, int at) {
        if (at + 1 >= html.length()
                || !Character.isLetter(html.charAt(at + 1)) && "/!".indexOf(html.charAt(at + 1)) < 0) {
            return -1;
        }
        for (int end = at + 1; end < Math.min(html.length(), at + LONGEST_TAG); end++) {
            if (html.charAt(end) == '>') {
                return end;
            }
            if (html.charAt(end) == '<') {
                return -1;
            }
        }
        return -1;
    }

    private static boolean breaks(String tag) {
        return tag.matches("(?i)/?(br|p|li|div|h[1-6]|ul|ol|tr|td|th)\\b.*");
    }

    private static int entityEnd(String html, int at) {
        String near = html.substring(at, Math.min(html.length(), at + LONGEST_ENTITY));
        int end = near.indexOf(';');
        return end < 2 ? -1 : at + end;
    }

    private static String entity(String name) {
        try {
            if (name.startsWith("#x") || name.startsWith("#X")) {
                return character(Integer.parseInt(name.substring(2), 16));
            }
            if (name.startsWith("#")) {
                return character(Integer.parseInt(name.substring(1)));
            }
        } catch (NumberFormatException notOne) {
            return "&" + name + ";";
        }
        return ENTITIES.getOrDefault(name, "&" + name + ";");
    }

    private static String character(int c) {
        boolean usable = Character.isValidCodePoint(c)
                && !Character.isISOControl(c)
                && Character.getType(c) != Character.SURROGATE;
        return usable ? Character.toString(c) : " ";
    }
}
