/**
 * Drawings of a set-up as plain SVG, to scale, in black and white with classes for a style sheet.
 */
@NullMarked
package org.standproud.web.drawing;

import org.jspecify.annotations.NullMarked;
