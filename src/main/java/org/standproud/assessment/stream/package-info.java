/**
 * Set-ups taken from a topic of a message broker, answers put on another, each once whatever breaks
 * in between.
 */
@NullMarked
package org.standproud.assessment.stream;

import org.jspecify.annotations.NullMarked;
