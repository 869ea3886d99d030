/** The diary on its shelves and in its ledger, its sections, verbs and marks. */
@NullMarked
package etamine.diary.internal;

import org.jspecify.annotations.NullMarked;
