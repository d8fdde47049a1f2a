/** Tries, proposes, publishes and restores cards, and stores their revisions. */
@NullMarked
package org.standproud.rules.publishing;

import org.jspecify.annotations.NullMarked;
