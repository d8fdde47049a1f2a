/** How far a cut can go before a card stops it, as numbers and as a drawing. */
@NullMarked
package org.standproud.advice.envelope;

import org.jspecify.annotations.NullMarked;
