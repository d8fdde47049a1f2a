/**
 * The one drawing library: plain SVG in black and white with classes for a style sheet to colour,
 * and the charts made with it.
 */
@NullMarked
package org.standproud.drawing;

import org.jspecify.annotations.NullMarked;
