package etamine.diary.internal;

import java.util.LinkedHashMap;
import java.util.Map;

/** Maps that keep the order of their members, as a report's machine form wants them. */
final class JsonMap {
    private JsonMap() {}

    /** Members and values in turn. */
    static Map<String, Object> of(Object... membersAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < membersAndValues.length; i += 2) {
            map.put((String) membersAndValues[i], membersAndValues[i + 1]);
        }
        return map;
    }
}
