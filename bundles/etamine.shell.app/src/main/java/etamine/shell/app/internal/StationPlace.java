package etamine.shell.app.internal;

/** A station as it stands on the rail. */
record StationPlace(String id, String name, String icon, int order) {}
