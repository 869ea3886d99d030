package etamine.widgets;

import java.math.BigDecimal;

/** Reads decimal numbers the way people type them. */
final class Numbers {
    private Numbers() {}

    /** The number, with a point or a comma before its decimals and spaces between thousands. */
    static BigDecimal decimal(String typed, String sentence) {
        String digits = typed.replace(" ", "").replace("\u00a0", "").replace("\u2212", "-");
        if (digits.indexOf(',') >= 0 && digits.indexOf('.') < 0 && digits.indexOf(',') == digits.lastIndexOf(',')) {
            digits = digits.replace(',', '.');
        }
        if (!digits.matches("-?(\\d{1,15}(\\.\\d{0,9})?|\\.\\d{1,9})")) {
            throw new IllegalArgumentException(sentence);
        }
        return new BigDecimal(digits.endsWith(".") ? digits + "0" : digits);
    }
}
