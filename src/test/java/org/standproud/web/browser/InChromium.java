package org.standproud.web.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Tests of the pages in a real Chromium. A {@link Browser} or a {@link Shop} is injected on
 * request; all tests of a run share one browser and one service. Without Chromium on the machine
 * the tests are skipped, with a loud message; where {@code BROWSER_TESTS=required} is in the
 * environment they fail instead.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(ChromiumExtension.class)
@interface InChromium {}
