package etamine.ordering.internal;

import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.kitchen.house.Kitchen;
import etamine.ordering.PlanTerms;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;

/** Reads the options that several verbs share, and builds maps that keep the order of their members. */
final class Values {
    private static final String FROM = "--from";
    private static final String DAYS = "--days";

    private Values() {}

    static PlanTerms terms(VerbCall call, Kitchen kitchen) throws VerbException {
        LocalDate from = call.has(FROM) ? date(call.option(FROM).orElse("")) : kitchen.today();
        String days = call.option(DAYS).orElse(String.valueOf(PlanTerms.USUAL_DAYS));
        try {
            return new PlanTerms(from, Integer.parseInt(days));
        } catch (NumberFormatException wrong) {
            throw VerbException.wrongCall("“" + days + "” is not a number of days; write digits such as 7.");
        } catch (IllegalArgumentException wrong) {
            throw VerbException.wrongCall(wrong.getMessage());
        }
    }

    private static LocalDate date(String text) throws VerbException {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException wrong) {
            throw VerbException.wrongCall("“" + text + "” is not a date; write it as 2026-11-27.");
        }
    }

    /** Members and values in turn. */
    static Map<String, Object> map(Object... membersAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < membersAndValues.length; i += 2) {
            map.put((String) membersAndValues[i], membersAndValues[i + 1]);
        }
        return map;
    }
}
