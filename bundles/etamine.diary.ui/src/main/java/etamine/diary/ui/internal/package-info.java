/** The diary station: a fortnight of covers, the menu mix, and what was sold or is expected on a day. */
@NullMarked
package etamine.diary.ui.internal;

import org.jspecify.annotations.NullMarked;
