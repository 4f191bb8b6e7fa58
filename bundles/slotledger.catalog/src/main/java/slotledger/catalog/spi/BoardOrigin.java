package slotledger.catalog.spi;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.osgi.service.component.annotations.ComponentPropertyType;

/**
 * Service property {@code board.origin} of a {@link BoardSource}: a few words that say whose boards it offers. (The
 * name of a property type with one element is derived from the type's name, Declarative Services 112.8.2.2.)
 */
@ComponentPropertyType
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.TYPE)
public @interface BoardOrigin {

    String value();
}
