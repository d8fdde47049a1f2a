/**
 * Where cards are tried, proposed, published and rolled back, and where their revisions are kept.
 */
@NullMarked
package org.standproud.rules.publishing;

import org.jspecify.annotations.NullMarked;
