/** The words of the pages, from one message catalogue. */
@NullMarked
package org.standproud.web.words;

import org.jspecify.annotations.NullMarked;
