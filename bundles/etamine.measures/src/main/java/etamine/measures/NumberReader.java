package etamine.measures;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.text.Normalizer;

/** Reads exact numbers from the front of a text and keeps the place; linear in the text, whatever it holds. */
final class NumberReader {
    private static final int LONGEST_TEXT = 600;
    private static final String MINUS = "-\u2212";
    private static final String SLASH = "/\u2044\u2215";

    private final String text;
    private int at;

    NumberReader(String text) {
        if (text.length() > LONGEST_TEXT) {
            throw new MeasureException("That is too long to be an amount; write a number and a unit, such as 250 g.");
        }
        this.text = text;
        skipSpace();
    }

    /** An optional sign, then a number. */
    Ratio signed() {
        boolean negative = sign();
        Ratio value = unsigned();
        return negative ? value.negate() : value;
    }

    /** Takes a sign; true when it was a minus. */
    boolean sign() {
        boolean negative = MINUS.indexOf(peek()) >= 0;
        if (negative || peek() == '+') {
            at++;
        }
        return negative;
    }

    /** A decimal, a fraction, a whole number with a fraction, or a fraction character. */
    Ratio unsigned() {
        if (!atNumber()) {
            throw new MeasureException("Begin with a number, such as 2, 0.5 or 1 1/2, instead of “" + excerpt() + "”.");
        }
        if (isFractionCharacter(peek())) {
            return fractionCharacter();
        }
        String digits = digits();
        if (peek() == '.' || peek() == ',') {
            return decimal(digits);
        }
        BigInteger whole = new BigInteger(digits);
        return SLASH.indexOf(peek()) >= 0 ? fraction(whole) : mixed(Ratio.of(whole, BigInteger.ONE));
    }

    private Ratio mixed(Ratio whole) {
        int start = at;
        skipSpace();
        if (isFractionCharacter(peek())) {
            return whole.plus(fractionCharacter());
        }
        if (at > start && isDigit(peek())) {
            BigInteger top = new BigInteger(digits());
            if (SLASH.indexOf(peek()) >= 0) {
                return whole.plus(fraction(top));
            }
        }
        at = start;
        return whole;
    }

    private Ratio fraction(BigInteger top) {
        at++;
        String bottom = digits();
        if (bottom.isEmpty()) {
            throw new MeasureException(
                    "The fraction “" + excerpt(top + "/") + "” needs a number below the line, such as 1/2.");
        }
        return Ratio.of(top, new BigInteger(bottom));
    }

    private Ratio decimal(String whole) {
        char mark = text.charAt(at++);
        String places = digits();
        boolean twoReadings = mark == ',' && places.length() == 3 && !whole.isEmpty() && !whole.startsWith("0");
        if (twoReadings || (peek() == '.' || peek() == ',') && isDigit(peekSecond())) {
            throw new MeasureException("“" + excerpt(whole + mark + places)
                    + "” can be read two ways; write the number without marks for thousands, such as 1500 or 1.5.");
        }
        if (places.isEmpty()) {
            throw new MeasureException("Write a digit after the “" + mark + "”, or leave it out.");
        }
        if (SLASH.indexOf(peek()) >= 0) {
            throw new MeasureException("Write either a decimal or a fraction, such as 0.5 or 1/2, not both.");
        }
        return Ratio.of(new BigDecimal("0" + whole + "." + places));
    }

    private Ratio fractionCharacter() {
        String plain = Normalizer.normalize(String.valueOf(text.charAt(at++)), Normalizer.Form.NFKC);
        int line = plain.indexOf('\u2044');
        return Ratio.of(Long.parseLong(plain.substring(0, line)), Long.parseLong(plain.substring(line + 1)));
    }

    private String digits() {
        int start = at;
        while (isDigit(peek())) {
            at++;
        }
        return text.substring(start, at);
    }

    /** True when a number begins here. */
    boolean atNumber() {
        char next = peek();
        return isDigit(next) || isFractionCharacter(next) || next == '.' && isDigit(peekSecond());
    }

    /** Takes a multiplication sign when another number follows it. */
    boolean times() {
        int start = at;
        skipSpace();
        if ("xX\u00d7*".indexOf(peek()) >= 0) {
            at++;
            skipSpace();
            if (atNumber()) {
                return true;
            }
        }
        at = start;
        return false;
    }

    /** Everything up to the next number or the end, without the space around it; keeps the point of {@code lb.4}. */
    String word() {
        int start = at;
        while (!atEnd() && (!atNumber() || peek() == '.' && at > start && !isSpace(text.charAt(at - 1)))) {
            at++;
        }
        return text.substring(start, at).strip();
    }

    boolean atEnd() {
        return at >= text.length();
    }

    void expectEnd() {
        skipSpace();
        if (!atEnd()) {
            throw new MeasureException("“" + excerpt() + "” is not part of a number; leave it out.");
        }
    }

    private void skipSpace() {
        while (!atEnd() && isSpace(text.charAt(at))) {
            at++;
        }
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private char peekSecond() {
        return at + 1 < text.length() ? text.charAt(at + 1) : '\0';
    }

    /** What stands here, short enough for a sentence. */
    String excerpt() {
        return excerpt(text.substring(Math.min(at, text.length())).strip());
    }

    static String excerpt(String words) {
        return words.length() > 30 ? words.substring(0, 30) + "…" : words;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    /** The vulgar fractions of Unicode; 0x215F is a numerator without a denominator and 0x2189 is zero thirds. */
    private static boolean isFractionCharacter(char c) {
        return c >= '\u00bc' && c <= '\u00be' || c >= '\u2150' && c <= '\u215e';
    }
}
