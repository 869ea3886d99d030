package etamine.catalogue.internal;

/**
 * GS1 article numbers of 8, 12, 13 or 14 digits. The last digit fills the sum of the others, weighted 3 and 1 in turn
 * from the right, up to the next ten (GS1 General Specifications, section 7.9).
 */
final class Gtin {
    private Gtin() {}

    /** Whether the text is such a number with the right check digit. */
    static boolean sound(String text) {
        if (!text.matches("[0-9]{8}|[0-9]{12,14}")) {
            return false;
        }
        int last = text.length() - 1;
        return checkDigit(text.substring(0, last)) == text.charAt(last) - '0';
    }

    /** The check digit for the digits before it. */
    static int checkDigit(String digits) {
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            int fromRight = digits.length() - 1 - i;
            sum += (digits.charAt(i) - '0') * (fromRight % 2 == 0 ? 3 : 1);
        }
        return (10 - sum % 10) % 10;
    }
}
