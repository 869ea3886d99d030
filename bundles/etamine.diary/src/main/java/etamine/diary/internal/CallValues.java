package etamine.diary.internal;

import etamine.base.verb.VerbException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** Reads dates and numbers from a call. */
final class CallValues {
    private CallValues() {}

    static LocalDate date(String text) throws VerbException {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException wrong) {
            throw VerbException.wrongCall("“" + text + "” is not a date; write it as 2026-11-27.");
        }
    }

    static int number(String text, String what) throws VerbException {
        try {
            int number = Integer.parseInt(text);
            if (number >= 0) {
                return number;
            }
        } catch (NumberFormatException wrong) {
            throw VerbException.wrongCall("“" + text + "” is not a number of " + what + "; write digits such as 52.");
        }
        throw VerbException.wrongCall("The number of " + what + " cannot be less than 0.");
    }
}
