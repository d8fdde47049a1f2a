/**
 * Reads set-ups from a topic of a message broker and writes answers to another, each once even
 * after a failure.
 */
@NullMarked
package org.standproud.assessment.stream;

import org.jspecify.annotations.NullMarked;
