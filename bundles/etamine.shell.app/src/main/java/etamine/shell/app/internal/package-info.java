/**
 * The window: ribbon, stations, bench, slate, and what keeps them answering while modules come, go and misbehave.
 */
@NullMarked
package etamine.shell.app.internal;

import org.jspecify.annotations.NullMarked;
