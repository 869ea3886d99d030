package etamine.diary.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * A value read from a document together with the document, whose unknown members outlive every change.
 *
 * @param value what this program understands of it
 * @param json the whole document
 */
record Kept<T>(T value, ObjectNode json) {}
