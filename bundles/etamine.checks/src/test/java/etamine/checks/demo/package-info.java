/** The demo kitchen: the seeded history behind it, and the checks that it is whole and believable. */
@NullMarked
package etamine.checks.demo;

import org.jspecify.annotations.NullMarked;
