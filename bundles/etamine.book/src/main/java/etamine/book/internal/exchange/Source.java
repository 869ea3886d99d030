package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;

/**
 * One file that was understood as JSON.
 *
 * @param file where it came from
 * @param top its outermost object
 */
record Source(Path file, ObjectNode top) {}
