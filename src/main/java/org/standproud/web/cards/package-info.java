/** The card editor and its pages: write, check, try, compare, publish, restore. */
@NullMarked
package org.standproud.web.cards;

import org.jspecify.annotations.NullMarked;
