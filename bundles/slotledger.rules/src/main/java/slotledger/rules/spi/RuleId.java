package slotledger.rules.spi;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.osgi.service.component.annotations.ComponentPropertyType;

/** The service property {@code rule.id} of a {@link MemoryRule}: the id on its page. */
@ComponentPropertyType
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface RuleId {

    String value();
}
