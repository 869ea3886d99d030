package etamine.base;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says that a type stands outside a rule on purpose. The tests of the rules read it from the class file; nothing reads
 * it at run time, so a bundle that carries it imports nothing for it.
 */
@Documented
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.TYPE)
public @interface Exemption {

    /** The rule, such as {@code exported-types}. */
    String rule();

    /** Why this type is better off without the rule, in a sentence. */
    String because();
}
