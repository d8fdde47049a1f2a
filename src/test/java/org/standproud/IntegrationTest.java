package org.standproud;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;

/**
 * Marks a test that needs more than this process (a started service, a database server, a broker, a
 * browser, another program) or that works for many seconds on a store or on the whole shop. Such
 * tests run in {@code mvn verify}, all others in {@code mvn test}. {@link TestTiersTest} finds
 * those that lack the mark.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@Tag("integration")
public @interface IntegrationTest {}
