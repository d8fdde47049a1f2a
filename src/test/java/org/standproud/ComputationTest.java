package org.standproud;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;

/**
 * Marks a test that computes for many seconds in this process and starts nothing. In {@code mvn
 * verify} all of them share one process, class beside class, with the optimizing compiler on: what
 * is compiled and cached for one serves the others. They share no state that changes.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@Tag("computation")
public @interface ComputationTest {}
